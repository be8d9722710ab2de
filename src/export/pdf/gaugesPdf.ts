/** `gauges.pdf`: gauges at full size, to print at 100 % and cut out. */
import { gaugeWords } from '#words/gauges.ts';
import { printWords } from '#words/print.ts';
import type { Basket } from '../../model/basket.ts';
import { gaugePages } from './gauge/gaugePages.ts';
import { dayText } from './page/day.ts';
import type { Page } from './page/mark.ts';
import { paperFor } from './page/paper.ts';
import type { Fonts, Ruler } from './page/ruler.ts';
import { rulerOf } from './page/ruler.ts';
import { writePdf } from './page/writePdf.ts';
import type { PrintWish } from './sheetPdf.ts';

/** Pages of the gauges, to be looked at before they are written. */
export function gaugesPreview(basket: Basket, ruler: Ruler, { paper, date }: PrintWish): Page[] {
  const chosen = paper ?? paperFor(basket.plan.display.unit);
  return gaugePages(basket, ruler, chosen, dayText(date));
}

/** Bytes of `gauges.pdf`. The same basket, fonts and date give the same bytes. */
export function gaugesPdf(basket: Basket, fonts: Fonts, wish: PrintWish): Promise<Uint8Array> {
  return writePdf(gaugesPreview(basket, rulerOf(fonts), wish), fonts, {
    title: gaugeWords.fileTitle(basket.plan.name),
    subject: printWords.kinds.gauges,
    date: wish.date,
  });
}
