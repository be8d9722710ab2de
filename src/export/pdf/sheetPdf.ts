/** `sheet.pdf`: the sheet to weave from, and what to cut and buy. */
import { printWords } from '#words/print.ts';
import type { Basket } from '../../model/basket.ts';
import { dayText } from './page/day.ts';
import type { Page } from './page/mark.ts';
import type { Paper } from './page/paper.ts';
import { paperFor } from './page/paper.ts';
import type { Fonts, Ruler } from './page/ruler.ts';
import { rulerOf } from './page/ruler.ts';
import { writePdf } from './page/writePdf.ts';
import { sheetPages } from './sheet/sheetPages.ts';

/** How a basket is to be printed. */
export interface PrintWish {
  /** Default: Letter for a plan in inches, else A4. */
  readonly paper?: Paper | undefined;
  /** The date on the sheet and in the file. */
  readonly date: Date;
  /** How many baskets the materials are for; default 1. */
  readonly baskets?: number | undefined;
}

/** Pages of the sheet, to be looked at before they are written. */
export function sheetPreview(basket: Basket, ruler: Ruler, wish: PrintWish): Page[] {
  return sheetPages(basket, ruler, {
    paper: wish.paper ?? paperFor(basket.plan.display.unit),
    day: dayText(wish.date),
    baskets: wish.baskets ?? 1,
  });
}

/** Bytes of `sheet.pdf`. The same basket, fonts and date give the same bytes. */
export function sheetPdf(basket: Basket, fonts: Fonts, wish: PrintWish): Promise<Uint8Array> {
  return writePdf(sheetPreview(basket, rulerOf(fonts), wish), fonts, {
    title: basket.plan.name,
    subject: printWords.kinds.sheet,
    date: wish.date,
  });
}
