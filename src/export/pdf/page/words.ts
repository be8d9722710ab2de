/** Texts set on a page. */
import type { Ink, Mark, TextMark } from './mark.ts';
import { inks } from './mark.ts';
import type { Ruler } from './ruler.ts';

export interface TextLook {
  readonly size?: number;
  readonly bold?: boolean;
  readonly ink?: Ink;
  readonly turn?: number;
  /** Which point of the text stands at x. Default: its left end. */
  readonly align?: Align;
}

export type Align = 'left' | 'middle' | 'right';

/** Height of plain type on the sheet, points. */
export const bodySize = 9;

/** One line of text at x, y (its baseline), mm. */
export function words(
  ruler: Ruler,
  text: string,
  x: number,
  y: number,
  look: TextLook = {},
): TextMark {
  const { size = bodySize, bold = false, ink = inks.ink, turn = 0, align = 'left' } = look;
  const drawn = ruler.drawable(text);
  const share = { left: 0, middle: 0.5, right: 1 }[align];
  const back = share === 0 ? 0 : share * ruler.width(drawn, size, bold);
  const angle = (turn * Math.PI) / 180;
  return {
    kind: 'text',
    x: x - back * Math.cos(angle),
    y: y + back * Math.sin(angle),
    text: drawn,
    size,
    bold,
    ink,
    turn,
  };
}

/** Distance from one line to the next, mm. */
export function leading(size: number): number {
  return size * 1.3 * (25.4 / 72);
}

/** `text` in lines no wider than `width` mm; a word that is too wide is broken. */
export function wrapped(
  ruler: Ruler,
  text: string,
  width: number,
  size: number,
  bold = false,
): string[] {
  const lines: string[] = [];
  let current = '';
  const fits = (candidate: string) => ruler.width(candidate, size, bold) <= width;
  for (const word of ruler.drawable(text).split(' ')) {
    const longer = current === '' ? word : `${current} ${word}`;
    if (fits(longer)) {
      current = longer;
      continue;
    }
    if (current !== '') lines.push(current);
    current = '';
    for (const character of word) {
      if (current !== '' && !fits(current + character)) {
        lines.push(current);
        current = '';
      }
      current += character;
    }
  }
  if (current !== '' || lines.length === 0) lines.push(current);
  return lines;
}

/** Several lines of text below one another; the first baseline is at y. */
export function stacked(
  ruler: Ruler,
  lines: readonly string[],
  x: number,
  y: number,
  look: TextLook = {},
): Mark[] {
  const step = leading(look.size ?? bodySize);
  return lines.map((text, at) => words(ruler, text, x, y + at * step, look));
}
