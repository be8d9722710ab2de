/** `compare.pdf`: two baskets side by side on one page. */
import { comparePageWords } from '#words/comparePage.ts';
import type { ComparedBaskets } from '../compareCsv.ts';
import { comparePage } from './compare/comparePage.ts';
import { dayText } from './page/day.ts';
import type { Paper } from './page/paper.ts';
import { paperFor } from './page/paper.ts';
import type { Fonts } from './page/ruler.ts';
import { rulerOf } from './page/ruler.ts';
import { writePdf } from './page/writePdf.ts';

export interface ComparePrintWish {
  /** Default: Letter for a first plan in inches, else A4. */
  readonly paper?: Paper;
  /** The date on the page and in the file. */
  readonly date: Date;
}

/** Bytes of the page. The same baskets, fonts and date give the same bytes. */
export function comparePdf(
  compared: ComparedBaskets,
  fonts: Fonts,
  { paper, date }: ComparePrintWish,
): Promise<Uint8Array> {
  const size = paper ?? paperFor(compared.a.plan.display.unit);
  const page = comparePage(compared, rulerOf(fonts), size, dayText(date));
  return writePdf([page], fonts, {
    title: comparePageWords.fileTitle(compared.a.plan.name, compared.b.plan.name),
    subject: comparePageWords.title,
    date,
  });
}
