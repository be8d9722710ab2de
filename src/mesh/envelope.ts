/**
 * The lowest or highest of several flat lines, read at places from left to right.
 *
 * @param lines each x, y, x, y, …
 * @param stations x of the places
 * @returns x, y, x, y, …; a place that no line spans is left out
 */
export function envelope(
  lines: readonly (readonly number[])[],
  stations: readonly number[],
  side: 'lower' | 'upper',
): number[] {
  const sign = side === 'lower' ? 1 : -1;
  const found: number[] = [];
  for (const x of stations) {
    let best = Number.POSITIVE_INFINITY;
    for (const line of lines) {
      for (let at = 0; at + 3 < line.length; at += 2) {
        const y = heightAt(line, at, x);
        if (y !== undefined) best = Math.min(best, sign * y);
      }
    }
    if (Number.isFinite(best)) found.push(x, sign * best);
  }
  return found;
}

/** Height at `x` of the piece of `line` that begins at place `at`, where it spans x. */
function heightAt(line: readonly number[], at: number, x: number): number | undefined {
  const [x0, y0, x1, y1] = [line[at]!, line[at + 1]!, line[at + 2]!, line[at + 3]!];
  if ((x0 < x && x1 < x) || (x0 > x && x1 > x)) return undefined;
  if (x0 === x1) return Math.min(y0, y1);
  return y0 + ((y1 - y0) * (x - x0)) / (x1 - x0);
}
