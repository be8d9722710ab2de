/** Where the way back to the plan first leads away from it. */

/**
 * The row to come (but the last, which is the aim) that is furthest from the plan, where that is further than the last woven row by more
 * than `tellable`, mm; else null. The gentlest way takes up the slope that the wall has: one that is
 * still moving away when it is measured goes on for some rows before it turns.
 *
 * @param planned girth by row of the plan, and `girths` as woven and replanned, mm
 * @param from the last woven row
 */
export function furthestOff(
  planned: ArrayLike<number>,
  girths: ArrayLike<number>,
  from: number,
  tellable: number,
): { readonly row: number; readonly off: number } | null {
  const off = (row: number) => (girths[row] ?? Number.NaN) - (planned[row] ?? Number.NaN);
  let furthest = from;
  for (let row = from + 1; row < planned.length - 1; row++) {
    if (Math.abs(off(row)) > Math.abs(off(furthest))) furthest = row;
  }
  const isFurther = Math.abs(off(furthest)) - Math.abs(off(from)) > tellable;
  return isFurther ? { row: furthest, off: off(furthest) } : null;
}
