/** What the maker does at a row, in words. */
import { colourWords } from '#words/colours.ts';
import { oddEndPlaceWords } from '#words/oddEndPlaces.ts';
import { stepWords as says } from '#words/steps.ts';
import { strandNameWords } from '#words/strandNames.ts';
import { weaveWords } from '#words/weaves.ts';
import { bandOfRow, nextBandSoon, rowCount } from '../../plan/counts.ts';
import type { Plan } from '../../plan/schema.ts';
import { formatLength } from '../../plan/units.ts';

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
    const width = formatLength(weaver.width, plan.display.unit);
    const dye = Object.hasOwn(colourWords, colour) ? `${colourWords[colour]}` : colour;
    const strand = says.strand(dye, strandNameWords.section[weaver.section], width);
    words.push((row === 1 ? says.begin : says.goOn)(weaveWords.inSentence[weave], strand));
  }
  if (spliceRows.includes(row)) {
    const next = nextBandSoon(plan, row);
    words.push(says.splice(plan.allowances.splice));
    if (next !== undefined) words.push(says.shortWeaver(next));
  }
  words.push(says.row(row, all));
  return words;
}

/** What comes before the first row: the odd end is made, the sides come up. */
function startWords({ base, oddEnd }: Plan): string[] {
  const words: string[] = [];
  if (oddEnd.kind === 'split') words.push(says.split(oddEndPlaceWords.at[oddEnd.at]));
  if (oddEnd.kind === 'added') words.push(says.added(oddEndPlaceWords.at[oddEnd.at]));
  const isFlatFirst =
    base.kind === 'mat' && base.corners.kind === 'fanned' && base.corners.rows > 0;
  if (!isFlatFirst) words.push(says.sidesUp[base.upsett]);
  return words;
}

function cornerWords({ base }: Plan, row: number): string[] {
  if (base.kind !== 'mat') return [];
  const { kind, rows } = base.corners;
  if (kind === 'pinned' && rows > 0) {
    if (row === 1) return [says.pin(rows)];
    if (row === rows + 1) return [says.unpin];
  }
  if (kind === 'fanned' && rows > 0) {
    if (row === 1) return [says.fan(rows)];
    if (row === rows + 1) return [says.sidesUp[base.upsett]];
  }
  return [];
}
