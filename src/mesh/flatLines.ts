/**
 * Lines of a drawing of the basket from one side.
 * Hot loops over typed arrays: `!` says that an index is inside.
 */

/** A line as x, y, x, y, … in mm; x to the right, y up, the table at y = 0. */
export type FlatLine = readonly number[];

/** The part of a counter-clockwise loop from its leftmost point round the near side to its rightmost. */
export function nearHalf(loop: readonly number[]): number[] {
  const count = loop.length / 2;
  let [low, high] = [0, 0];
  for (let at = 0; at < count; at += 1) {
    if (loop[2 * at]! < loop[2 * low]!) low = at;
    if (loop[2 * at]! > loop[2 * high]!) high = at;
  }
  const line: number[] = [];
  for (let at = low; count > 0; at = (at + 1) % count) {
    line.push(loop[2 * at]!, loop[2 * at + 1]!);
    if (at === high) break;
  }
  return line;
}

/** Places from `from` to `to` at which an edge is read, both ends left out. */
export function spread(from: number, to: number): number[] {
  const steps = 48;
  return Array.from({ length: steps - 1 }, (_, at) => from + ((to - from) * (at + 1)) / steps);
}

/** The line from its end to its beginning. */
export function reversed(line: FlatLine): number[] {
  const back: number[] = [];
  for (let at = line.length - 2; at >= 0; at -= 2) back.push(line[at]!, line[at + 1]!);
  return back;
}
