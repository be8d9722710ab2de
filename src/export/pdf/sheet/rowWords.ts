/** What is to be done at a row besides weaving it. */
import type { Basket } from '../../../model/basket.ts';
import type { Quantities } from '../../../model/quantity/quantities.ts';
import { formatLength } from '../../../plan/units.ts';
import { aboutLength } from './aboutLength.ts';
import { strandName } from './strandName.ts';

const starts: Readonly<Record<string, string>> = {
  continuous: 'start thin',
  rounds: 'one strand a row, start and stop',
  twined: 'twine, two strands',
  chased: 'two weavers, one chasing the other',
  twill: 'over two, under two',
};

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
    const how = weaver.startTaper === null && weaver.weave === 'continuous' ? 'join on' : '';
    say(weaver.first, `${name}: ${how || starts[weaver.weave] || 'weave'}`);
    for (const row of weaver.spliceRows) say(row, 'new weaver about here');
  }
  const corners = 'corners' in plan.base ? plan.base.corners : null;
  if (corners && corners.rows > 0) {
    if (corners.kind === 'pinned') {
      say(1, 'corners pinned');
      say(corners.rows + 1, 'pins off');
    }
    if (corners.kind === 'fanned') {
      say(1, 'lay the row flat round the base');
      say(corners.rows + 1, 'turn the sides up');
    }
  }
  for (const { row, text } of turns(basket)) say(row, text);
  if (hasBelly(basket)) {
    say(summary.belly.row, `widest: ${formatLength(summary.belly.tapeGirth, unit)}`);
  }
  const end = weavers.at(-1)?.endTaper;
  const last = rows.length;
  say(last, end ? `end thin over ${aboutLength(end, unit)}, above where it began` : 'last row');
  return new Map([...words].map(([row, texts]) => [row, sentence(texts)]));
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
    const way = change > 0 ? 'let out' : 'draw in';
    return [{ row: from + 1, text: level ? 'keep the girth' : way }];
  });
}

function sentence(texts: readonly string[]): string {
  const joined = texts.join('; ');
  return joined.charAt(0).toUpperCase() + joined.slice(1);
}
