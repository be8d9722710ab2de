/** Where rows and girths lie on the girth chart: rows go up, girth goes out to the right. */

export interface ChartFrame {
  /** Plot rectangle in the drawing, px; y grows downward as in SVG. */
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  /** Girths at `left` and `right`, mm. */
  readonly least: number;
  readonly most: number;
  /** Last row; row 0 lies at `bottom`, the last row at `top`. */
  readonly rows: number;
}

/** Room round the plot for row numbers, girths and half a number at the right, px. */
const margin = { left: 34, right: 14, top: 22, bottom: 36 } as const;

/** The narrowest range of girths shown, as a share of the largest: a straight line stays straight. */
const leastSpread = 0.12;

/** Free room beside the line, px: the body at the left, the notes on the stretches at the right. */
const freeLeft = 30;
const freeRight = 104;

/**
 * Lays the plot into a drawing of `width` × `height` px. `girths` are all lengths that must be seen,
 * mm; the range shown leaves free room on both sides, so that a point can be dragged outward.
 */
export function chartFrame(
  width: number,
  height: number,
  rows: number,
  girths: Iterable<number>,
): ChartFrame {
  let low = Number.POSITIVE_INFINITY;
  let high = 0;
  for (const girth of girths) {
    if (girth < low) low = girth;
    if (girth > high) high = girth;
  }
  if (!(low <= high)) [low, high] = [0, 100];
  const spread = Math.max(high - low, high * leastSpread);
  const left = margin.left;
  const right = Math.max(left + freeLeft + freeRight + 20, width - margin.right);
  const millimetresPerPixel = spread / (right - left - freeLeft - freeRight);
  return {
    left,
    right,
    top: margin.top,
    bottom: Math.max(margin.top + 1, height - margin.bottom),
    least: high - spread - freeLeft * millimetresPerPixel,
    most: high + freeRight * millimetresPerPixel,
    rows: Math.max(1, rows),
  };
}

/** x of a girth, px. */
export function xOf(frame: ChartFrame, girth: number): number {
  const share = (girth - frame.least) / (frame.most - frame.least);
  return frame.left + share * (frame.right - frame.left);
}

/** y of a row, px. */
export function yOf(frame: ChartFrame, row: number): number {
  return frame.bottom - (row / frame.rows) * (frame.bottom - frame.top);
}

/** Girth at x, mm. */
export function girthAt(frame: ChartFrame, x: number): number {
  const share = (x - frame.left) / (frame.right - frame.left);
  return frame.least + share * (frame.most - frame.least);
}

/** Nearest whole row at y, 0 to the last. */
export function rowAt(frame: ChartFrame, y: number): number {
  const row = Math.round(((frame.bottom - y) / (frame.bottom - frame.top)) * frame.rows);
  return Math.min(frame.rows, Math.max(0, row));
}

/** `M x,y L x,y …` through girth `girths[k]` at row `first + k`; gaps where a girth is not finite. */
export function girthPath(frame: ChartFrame, girths: ArrayLike<number>, first: number): string {
  let path = '';
  let pen = 'M';
  for (let index = 0; index < girths.length; index++) {
    const girth = girths[index] ?? Number.NaN;
    if (!Number.isFinite(girth)) {
      pen = 'M';
      continue;
    }
    path += `${pen}${xOf(frame, girth).toFixed(1)},${yOf(frame, first + index).toFixed(1)}`;
    pen = 'L';
  }
  return path;
}

/** A press this near to the line is meant for the line, px. */
const onTheLine = 12;

/** Whether a press at `girth` is close enough to the line at `line`, both mm, to be on it. */
export function isOnLine(frame: ChartFrame, girth: number, line: number): boolean {
  return Math.abs(xOf(frame, girth) - xOf(frame, line)) < onTheLine;
}
