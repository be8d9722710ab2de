/** What the maker does at a row, in words. */
import { bandOfRow, rowCount } from '../../plan/counts.ts';
import type { Plan } from '../../plan/schema.ts';
import { formatLength } from '../../plan/units.ts';
import { weaveFacts } from '../../plan/weaveFacts.ts';

/**
 * What happens at row `row` (1 … rows), in the order in which it is done; the row reached comes last.
 *
 * @param spliceRows rows in which a weaver runs out; see `model/quantity/weavers.ts`
 */
export function stepWords(plan: Plan, row: number, spliceRows: readonly number[]): string[] {
  const all = rowCount(plan);
  const words = row === 1 ? startWords(plan) : [];
  words.push(...cornerWords(plan, row));
  const band = bandOfRow(plan, row);
  if (row === 1 || band !== bandOfRow(plan, row - 1)) {
    const { colour, weave, weaver } = band;
    const strand = `${colour} ${weaver.section} ${formatLength(weaver.width, plan.display.unit)}`;
    words.push(`${row === 1 ? 'Begin' : 'Go on'} with ${weaveFacts[weave].name}: ${strand}.`);
  }
  if (spliceRows.includes(row)) {
    words.push(`The weaver runs out: splice a new one over ${plan.allowances.splice} stakes.`);
  }
  words.push(row === all ? `Row ${row}: the last one.` : `Row ${row} of ${all}.`);
  return words;
}

/** What comes before the first row: the odd end is made, the sides come up. */
function startWords({ base, oddEnd }: Plan): string[] {
  const words: string[] = [];
  if (oddEnd.kind === 'split') words.push(`Split the stake at the ${oddEnd.at}.`);
  if (oddEnd.kind === 'added') words.push(`Add one end at the ${oddEnd.at}.`);
  const isFlatFirst =
    base.kind === 'mat' && base.corners.kind === 'fanned' && base.corners.rows > 0;
  if (!isFlatFirst) words.push(sidesUp(base));
  return words;
}

function sidesUp({ upsett }: Plan['base']): string {
  return upsett === 'creased'
    ? 'Crease the stakes over the edge: the sides come up.'
    : 'The sides come up, the stakes bending over the first rows.';
}

function cornerWords({ base }: Plan, row: number): string[] {
  if (base.kind !== 'mat') return [];
  const { kind, rows } = base.corners;
  if (kind === 'pinned' && rows > 0) {
    if (row === 1) return [`Pin the two stakes of each corner together, for ${rows} rows.`];
    if (row === rows + 1) return ['Take the pins off the corners.'];
  }
  if (kind === 'fanned' && rows > 0) {
    if (row === 1) return [`Weave flat round the base, for ${rows} rows; let the corners fan.`];
    if (row === rows + 1) return [sidesUp(base)];
  }
  return [];
}
