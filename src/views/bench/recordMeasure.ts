/** One measure in a record: read, put in, taken out. */
import type { BenchRecord } from '../../keep/benchRecord.ts';
import type { Measure } from './measureEntry.ts';

/** What was measured of row `row` before, mm; the height was measured once, at whichever row. */
export function measureHad(record: BenchRecord, what: Measure, row: number): number | undefined {
  if (what === 'girth') return record.girths[row];
  return what === 'height' ? record.height?.height : record.across[row]?.[what];
}

/** What changes when `mm` is measured; a girth of the present row ends that row. */
export function withMeasure(
  record: BenchRecord,
  what: Measure,
  row: number,
  mm: number,
): Partial<BenchRecord> {
  if (what === 'height') return { height: { row, height: mm } };
  if (what === 'girth') {
    const isPresent = row >= record.row;
    return { girths: { ...record.girths, [row]: mm }, row: isPresent ? row + 1 : record.row };
  }
  return { across: { ...record.across, [row]: { ...record.across[row], [what]: mm } } };
}

/** What changes when a measure is forgotten. */
export function withoutMeasure(
  record: BenchRecord,
  what: Measure,
  row: number,
): Partial<BenchRecord> {
  if (what === 'height') return { height: null };
  if (what === 'girth') {
    const { [row]: _girth, ...girths } = record.girths;
    return { girths };
  }
  const { [row]: before, ...across } = record.across;
  const { [what]: _gone, ...kept } = before ?? {};
  return { across: Object.keys(kept).length > 0 ? { ...across, [row]: kept } : across };
}
