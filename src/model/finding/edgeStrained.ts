import { findingWords } from '#words/findings.ts';
import { bandOfRow } from '../../plan/counts.ts';
import type { Finding } from '../basket.ts';
import type { Find, RowValue } from './family.ts';
import { named, percent, stretches } from './family.ts';

/**
 * Edge strain that is worth knowing, and that is looked at. Common practice, no source: a flat strand that is
 * bent in its face by a few tenths of a percent gives way by itself; every belly has that much.
 */
const notable = 0.01;
const much = 0.02;

/** Rows in which a flat weaver cups, or its edge stands off. A round one bends every way alike. */
export const edgeStrained: Find = ({ plan, rows }) => {
  const flat = rows.filter(({ row }) => bandOfRow(plan, row).weaver.section !== 'round');
  const over = (limit: number): RowValue[] =>
    flat
      .filter(({ edgeStrain }) => edgeStrain > limit)
      .map(({ row, edgeStrain }) => ({ row, value: edgeStrain }));
  const grave = over(much);
  if (grave.length > 0) return stretches(grave).map((at) => finding(at.rows, at.worst, much));
  // Below that, one note for the whole basket is enough.
  const slight = over(notable);
  const worst = slight.toSorted((one, other) => other.value - one.value)[0];
  return worst ? [finding(stretchOf(slight, worst), worst, notable)] : [];
};

/** The unbroken stretch of rows that the worst one is in. */
function stretchOf(rows: readonly RowValue[], worst: RowValue): readonly number[] {
  const own = stretches(rows).find((stretch) => stretch.rows.includes(worst.row));
  return own?.rows ?? [worst.row];
}

function finding(rows: readonly number[], worst: RowValue, limit: number): Finding {
  const isMuch = limit === much;
  return {
    kind: 'edge-strained',
    severity: isMuch ? 'warn' : 'note',
    row: worst.row,
    rows,
    value: worst.value,
    limit,
    text: findingWords.edgeStrained(
      named(rows),
      worst.row,
      percent(worst.value),
      percent(limit),
      isMuch,
    ),
  };
}
