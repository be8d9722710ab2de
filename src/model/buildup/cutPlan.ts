import { rowCount, rowPitch } from '../../plan/counts.ts';
import { withMeasures } from '../../plan/measures.ts';
import type { Plan } from '../../plan/schema.ts';
import { girthLine } from '../girth/girthLine.ts';

/**
 * The plan as it stands when row `row` has been woven and nothing above it: rows up to there with their
 * own girths, and no handle yet.
 */
export function cutPlan(plan: Plan, row: number): Plan {
  const all = rowCount(plan);
  if (!(Number.isInteger(row) && row >= 1 && row <= all)) {
    throw new RangeError(`row is ${row}, allowed 1 to ${all}`);
  }
  const girths = girthLine(plan);
  let woven = 0;
  const bands = plan.bands.flatMap((band) => {
    const rows = Math.min(band.rows, row - woven);
    woven += Math.max(0, rows);
    return rows > 0 ? [{ ...band, rows }] : [];
  });
  const byHand = Array.from({ length: row - 1 }, (_, at) => [`${at + 1}`, girths[at + 1] ?? 0]);
  const cut: Plan = {
    ...plan,
    bands,
    girthLine: {
      points: [{ row, girth: girths[row] ?? 0 }],
      rows: Object.fromEntries(byHand),
    },
    handle: { kind: 'none' },
  };
  return withMeasures(cut, { girths: {}, across: {} });
}

/** How far the stakes stand on over the line of row `row` when nothing above it is woven, mm. */
export function standing(plan: Plan, row: number): number {
  let left = rowPitch(plan, row) / 2 + plan.allowances.tuck;
  for (let above = row + 1; above <= rowCount(plan); above += 1) left += rowPitch(plan, above);
  return left;
}
