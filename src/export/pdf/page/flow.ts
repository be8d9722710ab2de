/** Filling pages from top to bottom. */
import { pdfPageWords } from '#words/pdfPage.ts';
import type { Mark, Page } from './mark.ts';
import { inks, line } from './mark.ts';
import type { PaperSize } from './paper.ts';
import type { Ruler } from './ruler.ts';
import type { TextLook } from './words.ts';
import { bodySize, leading, stacked, words, wrapped } from './words.ts';

/** Blank edge all round, mm; the foot line stands in the lower one. */
export const margin = { side: 15, top: 14, bottom: 17 } as const;

/** A page that is to end before it is full: `page` counted from 0, and how much stays blank, mm. */
export interface ShorterPage {
  readonly page: number;
  readonly by: number;
}

/** A place to write that starts a new page where one is full. */
export class Flow {
  readonly ruler: Ruler;
  readonly paper: PaperSize;
  /** Where the next thing goes, mm from the top. */
  y: number = margin.top;
  /** How often a table has gone over to a next page. */
  splits = 0;
  readonly #pages: Mark[][] = [[]];
  readonly #shorter: ShorterPage | undefined;
  /** Where the writing of each full page ended, mm from its top. */
  readonly #ends: number[] = [];

  constructor(ruler: Ruler, paper: PaperSize, shorter?: ShorterPage) {
    this.ruler = ruler;
    this.paper = paper;
    this.#shorter = shorter;
  }

  /** A new page after what is written here, in a flow of its own: this one stays as it is. */
  after(shorter?: ShorterPage): Flow {
    const next = new Flow(this.ruler, this.paper, shorter);
    next.#pages.splice(0, 1, ...this.#pages);
    next.#ends.push(...this.#ends);
    next.y = this.y;
    next.turnPage();
    return next;
  }

  get left(): number {
    return margin.side;
  }

  get right(): number {
    return this.paper.width - margin.side;
  }

  get width(): number {
    return this.right - this.left;
  }

  /** What a page holds from top to bottom, mm. */
  get height(): number {
    return this.paper.height - margin.top - margin.bottom;
  }

  /** What is left of the page, mm. */
  get room(): number {
    const { page, by } = this.#shorter ?? { page: -1, by: 0 };
    const left = page === this.#pages.length - 1 ? by : 0;
    return this.paper.height - margin.bottom - left - this.y;
  }

  /** Share of each page that is written on, 0 … 1. */
  get filled(): readonly number[] {
    return [...this.#ends, this.y].map((end) => (end - margin.top) / this.height);
  }

  draw(...marks: readonly Mark[]): void {
    for (const mark of marks) this.#pages.at(-1)?.push(mark);
  }

  turnPage(): void {
    this.#pages.push([]);
    this.#ends.push(this.y);
    this.y = margin.top;
  }

  /** Turns the page if less than `height` mm are left; true if it did. */
  need(height: number): boolean {
    if (this.room >= height || this.y <= margin.top) return false;
    this.turnPage();
    return true;
  }

  /** A heading that stays with the `follow` mm below it. */
  heading(text: string, follow = 20): void {
    this.need(11 + follow);
    if (this.y > margin.top) this.y += 4;
    this.y += 5;
    this.draw(
      words(this.ruler, text, this.left, this.y, { size: 13, bold: true, ink: inks.accent }),
      line([this.left, this.y + 1.8, this.right, this.y + 1.8], {
        stroke: inks.accent,
        width: 0.3,
      }),
    );
    this.y += 4.5;
  }

  /** Text in lines over the whole width, or `indent` mm from the left. */
  paragraph(text: string, look: TextLook & { readonly indent?: number } = {}): void {
    const { indent = 0, size = bodySize, bold = false } = look;
    const lines = wrapped(this.ruler, text, this.width - indent, size, bold);
    const step = leading(size);
    this.need(lines.length * step);
    this.draw(...stacked(this.ruler, lines, this.left + indent, this.y + 0.75 * step, look));
    this.y += lines.length * step;
  }

  /** Height that a paragraph of `text` takes, mm. */
  tall(text: string, look: TextLook & { readonly indent?: number } = {}): number {
    const { indent = 0, size = bodySize, bold = false } = look;
    return wrapped(this.ruler, text, this.width - indent, size, bold).length * leading(size);
  }

  gap(height: number): void {
    this.y += height;
  }

  /** The pages, each with its foot line: `title` on the left, its number on the right. */
  pages(title: string): Page[] {
    const { width, height } = this.paper;
    const all = this.#pages;
    return all.map((marks, at) => ({
      width,
      height,
      marks: [
        ...marks,
        ...footLine(this.ruler, this.paper, title, pdfPageWords.page(at + 1, all.length)),
      ],
    }));
  }
}

/** A thin line at the foot of a page with two texts under it. */
export function footLine(ruler: Ruler, paper: PaperSize, left: string, right: string): Mark[] {
  const y = paper.height - 10;
  const look = { size: 8, ink: inks.soft };
  const ends = [margin.side, paper.width - margin.side] as const;
  const room = ends[1] - ends[0] - 30;
  return [
    line([ends[0], y - 4, ends[1], y - 4], { stroke: inks.line }),
    words(ruler, wrapped(ruler, left, room, 8)[0] ?? '', ends[0], y, look),
    words(ruler, right, ends[1], y, { ...look, align: 'right' }),
  ];
}
