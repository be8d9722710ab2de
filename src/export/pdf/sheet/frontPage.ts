/** The first page: what the basket is called, looks like and measures. */
import { sheetFrontWords as w } from '#words/sheetFront.ts';
import type { Basket } from '../../../model/basket.ts';
import { capacityText } from '../../../plan/capacity.ts';
import { endCount, rowCount } from '../../../plan/counts.ts';
import { withLengths } from '../../../plan/lengthText.ts';
import { formatLength } from '../../../plan/units.ts';
import type { Flow } from '../page/flow.ts';
import { inks, line } from '../page/mark.ts';
import { leading, stacked, words, wrapped } from '../page/words.ts';
import { picture } from '../picture/picture.ts';
import { outlineFigures } from './outlineFigure.ts';
import { weightText } from './weightText.ts';

const factColumn = 62;

/** Fills the page the flow stands on. */
export function frontPage(flow: Flow, basket: Basket, day: string, grams: number): void {
  const { ruler } = flow;
  const { plan } = basket;
  const title = wrapped(ruler, plan.name, flow.width, 22, true).slice(0, 3);
  flow.y += 8;
  flow.draw(
    ...stacked(ruler, title, flow.left, flow.y, { size: 22, bold: true, ink: inks.accent }),
  );
  flow.y += (title.length - 1) * leading(22) + 6;
  flow.draw(words(ruler, w.underTitle(day), flow.left, flow.y, { ink: inks.soft }));
  flow.y += 3;
  flow.draw(line([flow.left, flow.y, flow.right, flow.y], { stroke: inks.accent, width: 0.5 }));
  flow.y += 4;

  const outlines = 74;
  const notes = notesOf(basket);
  const noteLines = notes.map((text) => wrapped(ruler, text, flow.width, 9));
  const noteHeight = noteLines.reduce((sum, lines) => sum + lines.length * leading(9) + 1.5, 0);
  const spare = flow.room - outlines - 14 - Math.min(noteHeight, 60);
  const height = Math.min(112, spare);
  const left = flow.width - factColumn - 4;
  flow.draw(...picture(basket, [flow.left, flow.y, left, height]));
  facts(flow, basket, flow.left + left + 4, flow.y + 4, grams);
  flow.y += height + 3;
  flow.heading(w.outlines, outlines);
  const figures = outlineFigures(basket, ruler, flow.left, flow.y, flow.width, outlines);
  flow.draw(...figures.marks);
  flow.y += figures.height + 3;
  for (const text of notes) {
    flow.paragraph(text);
    flow.gap(1.5);
  }
}

/** The maker's own notes, and what the tool found. */
function notesOf({ plan, findings }: Basket): string[] {
  const found = findings
    .filter(({ severity }) => severity !== 'note')
    .map(({ severity, text }) => {
      const said = withLengths(text, plan.display.unit);
      return severity === 'stop' ? w.cannotBeWoven(said) : w.lookAt(said);
    });
  return [...(plan.notes.trim() ? [plan.notes] : []), ...found];
}

function facts(flow: Flow, basket: Basket, x: number, top: number, grams: number): void {
  const { plan, summary } = basket;
  const { unit } = plan.display;
  const length = (mm: number) => formatLength(mm, unit);
  const lines: readonly (readonly [string, string])[] = [
    [w.facts.height, `${length(summary.height)} · ${length(summary.heightWithRim)}`],
    [w.facts.rim, `${length(summary.rim.length)} × ${length(summary.rim.width)}`],
    [w.facts.rimGirth, length(summary.rim.tapeGirth)],
    [w.facts.belly, w.girthAtRow(length(summary.belly.tapeGirth), summary.belly.row)],
    [w.facts.base, `${length(summary.baseLength)} × ${length(summary.baseWidth)}`],
    [w.facts.ends, `${endCount(plan)}`],
    [w.facts.rows, `${rowCount(plan)}`],
    [w.facts.standsOn, summary.feet > 1 ? w.feet(summary.feet) : w.itsBase],
    [w.facts.clear, length(Math.max(0, summary.centreClearance))],
    [w.facts.holds, capacityText(summary.capacity, unit)],
    [w.facts.weight, weightText(grams, unit === 'in')],
  ];
  let y = top;
  for (const [name, value] of lines) {
    flow.draw(
      words(flow.ruler, name, x, y, { size: 7.5, ink: inks.soft }),
      words(flow.ruler, value, x, y + 4.4, { size: 10.5, bold: true }),
    );
    y += 9.6;
  }
}
