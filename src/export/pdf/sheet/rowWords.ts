/** What is to be done at a row besides weaving it. */
import { rowStepWords as w } from '#words/rowSteps.ts';
import type { Basket } from '../../../model/basket.ts';
import type { Quantities } from '../../../model/quantity/quantities.ts';
import { nextBandSoon } from '../../../plan/counts.ts';
import type { Unit } from '../../../plan/schema.ts';
import { formatLength, shownChange } from '../../../plan/units.ts';
import { aboutLength } from './aboutLength.ts';
import { strandName } from './strandName.ts';

/** Step words by row; a row without any has none. */
export function rowWords(basket: Basket, { weavers }: Quantities): ReadonlyMap<number, string> {
  const { plan, rows, summary } = basket;
  const { unit } = plan.display;
  const words = new Map<number, string[]>();
  const say = (row: number, text: string) => {
    if (row >= 1 && row <= rows.length) words.set(row, [...(words.get(row) ?? []), text]);
  };
  for (const weaver of weavers) {
    const name = strandName(weaver.stock, unit);
    const goesOn = weaver.startTaper === null && weaver.weave === 'continuous';
    say(weaver.first, w.weaver(name, goesOn ? w.joinOn : w.start[weaver.weave]));
    for (const row of weaver.spliceRows) {
      const next = nextBandSoon(plan, row);
      say(row, next === undefined ? w.newWeaver : w.shortWeaver(next));
    }
  }
  const corners = 'corners' in plan.base ? plan.base.corners : null;
  if (corners && corners.rows > 0) {
    if (corners.kind === 'pinned') {
      say(1, w.pinned);
      say(corners.rows + 1, w.pinsOff);
    }
    if (corners.kind === 'fanned') {
      say(1, w.fanned);
      say(corners.rows + 1, w.turnUp);
    }
  }
  for (const { row, text } of turns(basket)) say(row, text);
  if (hasBelly(basket)) {
    say(summary.belly.row, w.widest(formatLength(summary.belly.tapeGirth, unit)));
  }
  const end = weavers.at(-1)?.endTaper;
  const last = rows.length;
  say(last, end ? w.endThin(aboutLength(end, unit)) : w.last);
  return new Map([...words].map(([row, texts]) => [row, w.together(texts)]));
}

/** Whether some row is wider than both the first and the last by more than a tape can miss. */
export function hasBelly({ rows, summary }: Basket): boolean {
  const ends = [rows[0]?.tapeGirth ?? 0, rows.at(-1)?.tapeGirth ?? 0];
  return summary.belly.tapeGirth - Math.max(...ends) > 2;
}

/** Rows from which the girth line goes another way: outward, level, inward. */
function turns({ plan, rows }: Basket): { readonly row: number; readonly text: string }[] {
  const places = [0, ...plan.girthLine.points.map(({ row }) => row)].filter(
    (row) => row < rows.length,
  );
  return places.flatMap((from, at) => {
    const to = places[at + 1] ?? rows.length;
    const [one, other] = [rows[Math.max(0, from - 1)], rows[to - 1]];
    if (!one || !other || from === 0) return [];
    const change = other.tapeGirth - one.tapeGirth;
    const level = Math.abs(change) < 0.004 * one.tapeGirth;
    const sign = level ? 0 : Math.sign(change);
    const row = firstGoing(rows.slice(from, to), plan.display.unit, sign);
    const way = sign > 0 ? w.letOut : w.pullIn;
    return [{ row: row ?? from + 1, text: level ? w.keep : way }];
  });
}

/**
 * The first of `rows` whose change beside it on the sheet goes that way: a line that turns inward at a point
 * may still let out a sixteenth in the row after it.
 */
function firstGoing(rows: Basket['rows'], unit: Unit, sign: number): number | undefined {
  return rows.find(
    ({ tapeGirth, change }) => Math.sign(shownChange(tapeGirth - change, tapeGirth, unit)) === sign,
  )?.row;
}
