/** Two baskets on one page: outlines, girth lines, summary, and the differences place by place. */
import { comparePageWords as w } from '#words/comparePage.ts';
import { listWords } from '#words/lists.ts';
import { pdfPageWords } from '#words/pdfPage.ts';
import { planLetters } from '#words/planLetters.ts';
import { unitWords } from '#words/units.ts';
import type { PlaceDifference } from '../../../model/compare/differences.ts';
import { differenceText, gapDifference, measureText } from '../../../plan/measureText.ts';
import type { LengthOutput } from '../../../plan/units.ts';
import { formatChange, formatLength, shownChange } from '../../../plan/units.ts';
import type { ComparedBaskets } from '../../compareCsv.ts';
import { footLine, margin } from '../page/flow.ts';
import type { Mark, Page } from '../page/mark.ts';
import { inks } from '../page/mark.ts';
import type { Paper } from '../page/paper.ts';
import { paperSize } from '../page/paper.ts';
import type { Ruler } from '../page/ruler.ts';
import { words } from '../page/words.ts';
import { compareHead } from './compareHead.ts';
import { girthLines } from './girthLines.ts';
import { overlaidOutlines } from './overlaidOutlines.ts';
import type { GridColumn } from './smallTable.ts';
import { smallTable } from './smallTable.ts';

/** The page. Where there are more places than it has lines for, one in two, three … is printed. */
export function comparePage(
  compared: ComparedBaskets,
  ruler: Ruler,
  paper: Paper,
  day: string,
): Page {
  const { a, b, differences, measures } = compared;
  const { unit } = a.plan.display;
  const { width, height } = paperSize[paper];
  const [left, right] = [margin.side, width - margin.side];
  const bottom = height - margin.bottom;
  const marks: Mark[] = [...compareHead(compared, ruler, left, right, margin.top, day)];
  let y = margin.top + 26;
  // what the table of places leaves free makes the drawings larger
  const lines = Math.ceil(differences.places.length / blocks) + 1;
  const spare = Math.max(0, bottom - y - 72 - 90 - 14 - lines * step);

  marks.push(title(ruler, w.outlines, left, y + 3));
  y += 7;
  const tallest = 61 + Math.min(30, 0.6 * spare);
  const outlines = overlaidOutlines(a, b, ruler, [left, y, right - left, tallest]);
  marks.push(...outlines.marks);
  y += outlines.height + 4;

  marks.push(title(ruler, w.girthLines, left, y + 3));
  const middle = left + 0.45 * (right - left);
  const figures = smallTable(
    ruler,
    [middle + 5, y, right - middle - 5],
    [
      { title: w.summary, share: 5, align: 'left' },
      { title: planLetters.a, share: 3.2 },
      { title: planLetters.b, share: 3.2 },
      { title: w.difference, share: 3.2, bold: true },
    ],
    measures.map(({ name, kind, a: one, b: other }) => [
      name,
      measureText(kind, one, unit),
      measureText(kind, other, unit),
      differenceText(kind, one, other, unit),
    ]),
    { size: 7.5, step },
  );
  marks.push(...figures.marks);
  const tall = figures.height;
  marks.push(...girthLines(differences, unit, ruler, [left, y + 5, middle - left, tall - 5]));
  y += tall + 6;

  marks.push(...placeBlocks(compared, ruler, [left, y, right - left, bottom - y]));
  marks.push(
    ...footLine(
      ruler,
      { width, height },
      w.foot(a.plan.name, b.plan.name, day),
      pdfPageWords.page(1, 1),
    ),
  );
  return { width, height, marks };
}

/** What stands over a part of the page. */
function title(ruler: Ruler, text: string, x: number, y: number): Mark {
  return words(ruler, text, x, y, { size: 10, bold: true, ink: inks.accent });
}

/** Height of a line of the tables, mm, and how many tables of places stand side by side. */
const step = 3.9;
const blocks = 3;

/** Blocks of the table of differences, next to each other. */
function placeBlocks(
  { a, differences }: ComparedBaskets,
  ruler: Ruler,
  [left, top, width, height]: readonly [number, number, number, number],
): Mark[] {
  const { by, places, most, total } = differences;
  const { unit } = a.plan.display;
  const plain = (mm: number) => formatLength(mm, unit, { withUnit: false });
  const gap = 5;
  const lines = Math.max(1, Math.floor((height - 14) / step) - 1);
  const every = Math.max(1, Math.ceil(places.length / (lines * blocks)));
  const shown = places.filter(
    ({ place }) => place % every === 0 || place === most?.place || place === places.length,
  );
  const perBlock = Math.ceil(shown.length / blocks);
  const columns: readonly GridColumn[] = [
    { title: w.place[by], share: by === 'row' ? 1.7 : 2.4 },
    { title: planLetters.a, share: 3 },
    { title: planLetters.b, share: 3 },
    { title: w.difference, share: 3.6, bold: true },
    { title: w.perGap, share: 2.7 },
  ];
  const block = (width - (blocks - 1) * gap) / blocks;
  // of the two figures as they are printed
  const change = (one: { readonly a: number; readonly b: number }, output?: LengthOutput) =>
    formatChange(shownChange(one.a, one.b, unit), unit, output);
  const placeName = ({ place, height: level }: PlaceDifference) =>
    by === 'row' ? `${place}` : formatLength(level, unit);
  const together =
    every > 1
      ? w.togetherOneIn[by](total.places, change(total), every)
      : w.together[by](total.places, change(total));
  const marks: Mark[] = [
    title(ruler, w.heading[by](unitWords.length[unit]), left, top + 3),
    words(
      ruler,
      most
        ? listWords.sentences([w.mostApart[by](change(most), placeName(most)), together])
        : together,
      left + width,
      top + 3,
      { size: 8, ink: inks.soft, align: 'right' },
    ),
  ];
  for (let at = 0; at < blocks; at += 1) {
    const part = shown.slice(at * perBlock, (at + 1) * perBlock);
    if (part.length === 0) continue;
    const x = left + at * (block + gap);
    marks.push(
      ...smallTable(
        ruler,
        [x, top + 6, block],
        columns,
        part.map((place) => [
          by === 'row' ? `${place.place}` : plain(place.height),
          plain(place.a),
          plain(place.b),
          change(place, { withUnit: false }),
          gapDifference(place.perGap, unit),
        ]),
        { size: 7.5, step, picked: part.findIndex(({ place }) => place === most?.place) },
      ).marks,
    );
  }
  return marks;
}
