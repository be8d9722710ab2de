/** The part of a drawing that falls inside a frame. */
import type { LineMark, Mark } from '../page/mark.ts';

type Frame = readonly [left: number, top: number, width: number, height: number];

/**
 * `marks` moved by `origin` and cut at the frame; texts are kept where they begin inside it. What is
 * cut loses its fill.
 */
export function clipped(
  marks: readonly Mark[],
  [dx, dy]: readonly [number, number],
  frame: Frame,
): Mark[] {
  return marks.flatMap((mark): Mark[] => {
    if (mark.kind === 'text') {
      const [x, y] = [mark.x + dx, mark.y + dy];
      return isInside(x, y, frame) ? [{ ...mark, x, y }] : [];
    }
    const moved = mark.points.map((value, at) => value + (at % 2 === 0 ? dx : dy));
    const isWhole = moved.every(
      (value, at) => at % 2 === 1 || isInside(value, moved[at + 1] ?? 0, frame),
    );
    if (isWhole) return [{ ...mark, points: moved }];
    if (!mark.stroke) return [];
    return pieces(moved, mark.closed, frame).map(
      (points): LineMark => ({ ...mark, points, closed: false, fill: null }),
    );
  });
}

function isInside(x: number, y: number, [left, top, width, height]: Frame): boolean {
  return x >= left && x <= left + width && y >= top && y <= top + height;
}

/** Runs of a line inside the frame. */
function pieces(points: readonly number[], closed: boolean, frame: Frame): number[][] {
  const all = closed ? [...points, points[0] ?? 0, points[1] ?? 0] : points;
  const found: number[][] = [];
  for (let at = 0; at + 3 < all.length; at += 2) {
    const part = segment(
      [all[at] ?? 0, all[at + 1] ?? 0, all[at + 2] ?? 0, all[at + 3] ?? 0],
      frame,
    );
    if (!part) continue;
    const last = found.at(-1);
    if (last && last.at(-2) === part[0] && last.at(-1) === part[1]) last.push(part[2], part[3]);
    else found.push([...part]);
  }
  return found;
}

/** A segment cut at the frame (Liang and Barsky's way), or null if it lies outside. */
function segment(
  [x0, y0, x1, y1]: readonly [number, number, number, number],
  [left, top, width, height]: Frame,
): readonly [number, number, number, number] | null {
  let [from, to] = [0, 1];
  const [dx, dy] = [x1 - x0, y1 - y0];
  const sides = [
    [-dx, x0 - left],
    [dx, left + width - x0],
    [-dy, y0 - top],
    [dy, top + height - y0],
  ] as const;
  for (const [step, room] of sides) {
    if (step === 0) {
      if (room < 0) return null;
    } else if (step < 0) from = Math.max(from, room / step);
    else to = Math.min(to, room / step);
  }
  if (from > to) return null;
  const at = (share: number): readonly [number, number] => [x0 + share * dx, y0 + share * dy];
  return [
    ...(from === 0 ? ([x0, y0] as const) : at(from)),
    ...(to === 1 ? ([x1, y1] as const) : at(to)),
  ];
}
