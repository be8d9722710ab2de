/** The fonts of the sheet, fetched from beside the app once they are needed. */

import regularFont from 'dejavu-fonts-ttf/ttf/DejaVuSansCondensed.ttf?url';
import boldFont from 'dejavu-fonts-ttf/ttf/DejaVuSansCondensed-Bold.ttf?url';
import { printWords } from '#words/print.ts';
import type { Fonts } from '../../export/pdf/page/ruler.ts';

/** Family by which the preview finds them. */
export const sheetFamily = 'Girthline sheet';

/** Both fonts as bytes; the page may use them too, under `sheetFamily`. */
export async function sheetFonts(): Promise<Fonts> {
  const [regular, bold] = await Promise.all([bytesAt(regularFont), bytesAt(boldFont)]);
  for (const [bytes, weight] of [[regular, '400'] as const, [bold, '700'] as const]) {
    const face = new FontFace(sheetFamily, new Uint8Array(bytes).buffer, { weight });
    document.fonts.add(await face.load());
  }
  return { regular, bold };
}

async function bytesAt(address: string): Promise<Uint8Array> {
  const answer = await fetch(address);
  if (!answer.ok) throw new Error(printWords.noLetters(answer.status));
  return new Uint8Array(await answer.arrayBuffer());
}
