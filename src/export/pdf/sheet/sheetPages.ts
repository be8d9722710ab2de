/** The sheet to weave from, as pages. */
import { sheetCareWords } from '#words/sheetCare.ts';
import { sheetChartWords } from '#words/sheetChart.ts';
import { sheetCutWords } from '#words/sheetCut.ts';
import { sheetStepWords } from '#words/sheetSteps.ts';
import type { Basket } from '../../../model/basket.ts';
import type { Quantities } from '../../../model/quantity/quantities.ts';
import { quantities } from '../../../model/quantity/quantities.ts';
import { shoppingList } from '../../../model/quantity/shopping.ts';
import { Flow } from '../page/flow.ts';
import type { Page } from '../page/mark.ts';
import type { Paper } from '../page/paper.ts';
import { paperSize } from '../page/paper.ts';
import type { Ruler } from '../page/ruler.ts';
import { remembering } from '../page/ruler.ts';
import { cutTable, shoppingTable, weaverTable } from './cutTables.ts';
import { frontPage } from './frontPage.ts';
import { girthFigure } from './girthFigure.ts';
import { rowChart } from './rowChart.ts';
import { rowWords } from './rowWords.ts';
import type { Step } from './steps.ts';
import { steps } from './steps.ts';
import { weightText } from './weightText.ts';
import type { Content } from './wellFilled.ts';
import { wellFilled } from './wellFilled.ts';

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
  const needs = quantities(basket);
  const front = new Flow(remembering(ruler), paperSize[paper]);
  frontPage(front, basket, day, needs.grams);
  const content = contentOf(basket, needs, baskets);
  return wellFilled(front, content).pages(`${basket.plan.name} · ${day}`);
}

/** What stands on the pages after the first one, ready to be written to one flow or another. */
function contentOf(basket: Basket, needs: Quantities, baskets: number): Content {
  const { plan } = basket;
  const { unit } = plan.display;
  const { waste } = plan.allowances;
  const words = rowWords(basket, needs);
  const work = steps(basket, needs);
  const { buy } = sheetCutWords;
  const note = buy.note(weightText(needs.grams, unit === 'in'), Math.round(100 * waste));
  const shopping = (count: number) => shoppingList(needs, count, waste, unit);
  return (flow, { figure, rowHeight }) => {
    rowChart(flow, basket, words, rowHeight);
    flow.heading(sheetChartWords.line.heading, figure);
    flow.draw(...girthFigure(basket, flow.ruler, flow.left, flow.y, flow.width, figure));
    flow.gap(figure);
    cutTable(flow, basket, needs);
    weaverTable(flow, basket, needs);
    shoppingTable(flow, basket, shopping(1), 1, note);
    if (baskets > 1) shoppingTable(flow, basket, shopping(baskets), baskets);
    stepList(flow, work);
    cautions(flow);
  };
}

/** The steps, each whole on its page. */
function stepList(flow: Flow, work: readonly Step[]): void {
  flow.heading(sheetStepWords.heading, 30);
  work.forEach(({ title, text }, at) => {
    const name = `${at + 1}. ${title}`;
    flow.need(flow.tall(name, stepTitle) + flow.tall(text, stepText));
    flow.paragraph(name, stepTitle);
    flow.paragraph(text, stepText);
    flow.gap(1.6);
  });
}

const stepTitle = { bold: true, size: 9.5 };
const stepText = { indent: 7 };

function cautions(flow: Flow): void {
  flow.heading(sheetCareWords.heading, 40);
  for (const caution of sheetCareWords.cautions) {
    flow.paragraph(`– ${caution}`, { size: 8.5 });
    flow.gap(0.9);
  }
}
