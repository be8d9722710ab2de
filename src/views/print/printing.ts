/** Laying out and writing the two PDFs in the browser. */
import { gaugesPdf, gaugesPreview } from '../../export/pdf/gaugesPdf.ts';
import type { Page } from '../../export/pdf/page/mark.ts';
import type { Fonts, Ruler } from '../../export/pdf/page/ruler.ts';
import { rulerOf } from '../../export/pdf/page/ruler.ts';
import type { PrintWish } from '../../export/pdf/sheetPdf.ts';
import { sheetPdf, sheetPreview } from '../../export/pdf/sheetPdf.ts';
import type { Basket } from '../../model/basket.ts';
import { sheetFonts } from './sheetFonts.ts';

export const printKinds = ['sheet', 'gauges'] as const;
export type PrintKind = (typeof printKinds)[number];

/** Everything that is needed to print: fetched once, kept while the app is open. */
export interface Press {
  readonly fonts: Fonts;
  readonly ruler: Ruler;
}

let press: Promise<Press> | null = null;

/** The press, fetched at the first call; a failure is forgotten, so that one can try again. */
export function readyPress(): Promise<Press> {
  press ??= sheetFonts().then(
    (fonts) => ({ fonts, ruler: rulerOf(fonts) }),
    (error: unknown) => {
      press = null;
      throw error;
    },
  );
  return press;
}

const previews = { sheet: sheetPreview, gauges: gaugesPreview } as const;
const writers = { sheet: sheetPdf, gauges: gaugesPdf } as const;

/** Pages of one of the two, to look at. */
export function pagesOf(kind: PrintKind, basket: Basket, press: Press, wish: PrintWish): Page[] {
  return previews[kind](basket, press.ruler, wish);
}

/** Bytes of one of the two. */
export function pdfOf(
  kind: PrintKind,
  basket: Basket,
  press: Press,
  wish: PrintWish,
): Promise<Uint8Array> {
  return writers[kind](basket, press.fonts, wish);
}

/** Lets the browser paint what has been said before the next long piece of work. */
export function painted(): Promise<void> {
  return new Promise((resolve) => {
    requestAnimationFrame(() => setTimeout(resolve));
  });
}
