/** Two baskets on one picture for a screen: a place for their likenesses, girth lines and summary. */
import { comparePageWords as w } from '#words/comparePage.ts';
import { planLetters } from '#words/planLetters.ts';
import { differenceText, measureText } from '../../../plan/measureText.ts';
import type { ComparedBaskets } from '../../compareCsv.ts';
import type { Mark } from '../page/mark.ts';
import type { Ruler } from '../page/ruler.ts';
import { compareHead } from './compareHead.ts';
import { girthLines } from './girthLines.ts';
import { overlaidOutlines } from './overlaidOutlines.ts';
import { smallTable } from './smallTable.ts';

/** A place from its upper left corner: x, y, width, height, mm. */
type Place = readonly [number, number, number, number];

export interface Poster {
  readonly width: number;
  readonly height: number;
  readonly marks: readonly Mark[];
  /** Where the pictures go; null where the outlines are drawn in their place. */
  readonly pictures: Place | null;
}

const width = 240;
const edge = 10;

/** The poster; `aspect` is width over height of the pictures together, null where there are none. */
export function comparePoster(
  compared: ComparedBaskets,
  ruler: Ruler,
  aspect: number | null,
  day: string,
): Poster {
  const { a, b, differences, measures } = compared;
  const { unit } = a.plan.display;
  const inner = width - 2 * edge;
  const top = edge + 24;
  const outlines = aspect === null ? overlaidOutlines(a, b, ruler, [edge, top, inner, 90]) : null;
  const tall = outlines?.height ?? Math.min(120, inner / (aspect ?? 1));
  const place: Place = [edge, top, inner, tall];
  const lower = top + tall + 6;
  const left = 0.45 * inner;
  const table = smallTable(
    ruler,
    [edge + left + 8, lower, inner - left - 8],
    [
      { title: w.summary, share: 5, align: 'left' },
      { title: planLetters.a, share: 3 },
      { title: planLetters.b, share: 3 },
      { title: w.difference, share: 3, bold: true },
    ],
    measures.map(({ name, kind, a: one, b: other }) => [
      name,
      measureText(kind, one, unit),
      measureText(kind, other, unit),
      differenceText(kind, one, other, unit),
    ]),
    { size: 9, step: 4.9 },
  );
  return {
    width,
    height: lower + table.height + edge,
    pictures: aspect === null ? null : place,
    marks: [
      ...compareHead(compared, ruler, edge, width - edge, edge, day),
      ...(outlines?.marks ?? []),
      ...girthLines(differences, unit, ruler, [edge, lower, left, table.height]),
      ...table.marks,
    ],
  };
}
