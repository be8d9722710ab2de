/** The PDFs of a basket, in the fonts that the project brings along. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { gaugesPdf } from '../export/pdf/gaugesPdf.ts';
import type { Fonts } from '../export/pdf/page/ruler.ts';
import { sheetPdf } from '../export/pdf/sheetPdf.ts';
import type { Basket } from '../model/basket.ts';
import type { Options } from './options.ts';

/** `sheet.pdf` and `gauges.pdf` by name. */
export async function printed(
  basket: Basket,
  { paper, baskets, date = new Date() }: Pick<Options, 'paper' | 'baskets' | 'date'>,
): Promise<Readonly<Record<string, Uint8Array>>> {
  const fonts = projectFonts();
  const wish = { paper, baskets, date };
  return {
    'sheet.pdf': await sheetPdf(basket, fonts, wish),
    'gauges.pdf': await gaugesPdf(basket, fonts, wish),
  };
}

/** The fonts, read from the package that brings them. */
export function projectFonts(): Fonts {
  const { resolve } = createRequire(import.meta.url);
  const font = (name: string) => readFileSync(resolve(`dejavu-fonts-ttf/ttf/${name}.ttf`));
  return { regular: font('DejaVuSansCondensed'), bold: font('DejaVuSansCondensed-Bold') };
}
