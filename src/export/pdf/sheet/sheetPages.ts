/** The sheet to weave from, as pages. */
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
import { cautions } from './cautions.ts';
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
  const flow = new Flow(ruler, paperSize[paper]);

  frontPage(flow, basket, day, needs.grams);

  flow.turnPage();
  flow.heading('Row chart');
  rowChart(flow, basket, rowWords(basket, needs));

  const height = 92;
  flow.heading('Girth line', height);
  flow.draw(...girthFigure(basket, ruler, flow.left, flow.y, flow.width, height));
  flow.gap(height);
  flow.heading('Cut list', 40);
  cutTable(flow, basket, needs);
  flow.heading('Weavers', 30);
  weaverTable(flow, basket, needs);

  flow.heading('Materials to buy', 50);
  flow.paragraph(
    `One basket weighs about ${weightText(needs.grams, unit === 'in')} and takes the lengths below with ` +
      `${Math.round(100 * waste)} % for waste. Yields are rough (15 to 20 % either way): ask the ` +
      'supplier. Of each size one line; long stakes want long strands.',
    { size: 8.5, ink: inks.soft },
  );
  flow.gap(1.5);
  shoppingTable(flow, basket, shoppingList(needs, 1, waste, unit), 1);
  if (baskets > 1) {
    flow.heading(`Materials for a class of ${baskets}`, 50);
    shoppingTable(flow, basket, shoppingList(needs, baskets, waste, unit), baskets);
  }

  flow.heading('Steps', 30);
  steps(basket, needs).forEach(({ title, text }, at) => {
    const lines = wrapped(ruler, text, flow.width - 7, 9).length;
    flow.need(leading(9.5) + lines * leading(9) + 2);
    flow.paragraph(`${at + 1}. ${title}`, { bold: true, size: 9.5 });
    flow.paragraph(text, { indent: 7 });
    flow.gap(1.6);
  });
  flow.heading('Take care', 40);
  for (const caution of cautions) {
    flow.paragraph(`– ${caution}`, { size: 8.5, indent: 0 });
    flow.gap(0.9);
  }
  return flow.pages(`${plan.name} · ${day}`);
}
