/** The sheet to weave from, as pages. */
import { sheetCareWords } from '#words/sheetCare.ts';
import { sheetChartWords } from '#words/sheetChart.ts';
import { sheetCutWords } from '#words/sheetCut.ts';
import { sheetStepWords } from '#words/sheetSteps.ts';
import type { Basket } from '../../../model/basket.ts';
import { quantities } from '../../../model/quantity/quantities.ts';
import { shoppingList } from '../../../model/quantity/shopping.ts';
import { Flow } from '../page/flow.ts';
import type { Page } from '../page/mark.ts';
import { inks } from '../page/mark.ts';
import type { Paper } from '../page/paper.ts';
import { paperSize } from '../page/paper.ts';
import type { Ruler } from '../page/ruler.ts';
import { leading, wrapped } from '../page/words.ts';
import { cutTable, shoppingTable, weaverTable } from './cutTables.ts';
import { frontPage } from './frontPage.ts';
import { girthFigure } from './girthFigure.ts';
import { rowChart } from './rowChart.ts';
import { rowWords } from './rowWords.ts';
import { steps } from './steps.ts';
import { weightText } from './weightText.ts';

export interface SheetWish {
  readonly paper: Paper;
  /** Day that is printed on the sheet, as it is to be read. */
  readonly day: string;
  /** How many baskets the class makes. */
  readonly baskets: number;
}

/** Pages of the sheet. */
export function sheetPages(
  basket: Basket,
  ruler: Ruler,
  { paper, day, baskets }: SheetWish,
): Page[] {
  const { plan } = basket;
  const needs = quantities(basket);
  const { unit } = plan.display;
  const { waste } = plan.allowances;
  const { buy } = sheetCutWords;
  const flow = new Flow(ruler, paperSize[paper]);

  frontPage(flow, basket, day, needs.grams);

  flow.turnPage();
  flow.heading(sheetChartWords.heading);
  rowChart(flow, basket, rowWords(basket, needs));

  const height = 92;
  flow.heading(sheetChartWords.line.heading, height);
  flow.draw(...girthFigure(basket, ruler, flow.left, flow.y, flow.width, height));
  flow.gap(height);
  flow.heading(sheetCutWords.cut.heading, 40);
  cutTable(flow, basket, needs);
  flow.heading(sheetCutWords.weavers.heading, 30);
  weaverTable(flow, basket, needs);

  flow.heading(buy.heading, 50);
  flow.paragraph(buy.note(weightText(needs.grams, unit === 'in'), Math.round(100 * waste)), {
    size: 8.5,
    ink: inks.soft,
  });
  flow.gap(1.5);
  shoppingTable(flow, basket, shoppingList(needs, 1, waste, unit), 1);
  if (baskets > 1) {
    flow.heading(buy.headingForClass(baskets), 50);
    shoppingTable(flow, basket, shoppingList(needs, baskets, waste, unit), baskets);
  }

  flow.heading(sheetStepWords.heading, 30);
  steps(basket, needs).forEach(({ title, text }, at) => {
    const lines = wrapped(ruler, text, flow.width - 7, 9).length;
    flow.need(leading(9.5) + lines * leading(9) + 2);
    flow.paragraph(`${at + 1}. ${title}`, { bold: true, size: 9.5 });
    flow.paragraph(text, { indent: 7 });
    flow.gap(1.6);
  });
  flow.heading(sheetCareWords.heading, 40);
  for (const caution of sheetCareWords.cautions) {
    flow.paragraph(`– ${caution}`, { size: 8.5, indent: 0 });
    flow.gap(0.9);
  }
  return flow.pages(`${plan.name} · ${day}`);
}
