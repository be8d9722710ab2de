/** Pages as the bytes of a PDF: real text in embedded, subset fonts; lines as vectors. */
import fontkit from '@pdf-lib/fontkit';
import { PDFDocument } from 'pdf-lib';
import { language } from '#words/language.ts';
import { pdfPageWords } from '#words/pdfPage.ts';
import type { Typeface } from './content.ts';
import { contentOf } from './content.ts';
import type { Page } from './mark.ts';
import type { Fonts } from './ruler.ts';

export interface PdfHead {
  readonly title: string;
  readonly subject: string;
  /** Written as the file's date, so that the same plan and date give the same bytes. */
  readonly date: Date;
}

/** Points to a millimetre. */
const points = 72 / 25.4;

/** Letters stand as the ruler measures them. */
const features = { kern: false, liga: false, clig: false, calt: false };

/** The PDF file of `pages`. */
export async function writePdf(
  pages: readonly Page[],
  fonts: Fonts,
  { title, subject, date }: PdfHead,
): Promise<Uint8Array> {
  const file = await PDFDocument.create({ updateMetadata: false });
  file.registerFontkit(fontkit);
  const embed = (bytes: Uint8Array, customName: string) =>
    file.embedFont(bytes, { subset: true, customName, features });
  const regular = await embed(fonts.regular, 'GIRTHL+DejaVuSansCondensed');
  const bold = await embed(fonts.bold, 'GIRTHM+DejaVuSansCondensed-Bold');
  file.setTitle(title, { showInWindowTitleBar: true });
  file.setSubject(subject);
  file.setCreator(pdfPageWords.maker);
  file.setProducer(pdfPageWords.maker);
  file.setLanguage(language);
  file.setCreationDate(date);
  file.setModificationDate(date);
  for (const { width, height, marks } of pages) {
    const page = file.addPage([width * points, height * points]);
    const face = (font: typeof regular, tag: string): Typeface => ({
      key: page.node.newFontDictionary(tag, font.ref).toString(),
      encoded: (text) => font.encodeText(text).toString(),
    });
    const content = contentOf(marks, height, face(regular, 'Regular'), face(bold, 'Bold'));
    page.node.addContentStream(file.context.register(file.context.flateStream(content)));
  }
  return file.save();
}
