/**
 * What is drawn on a page, before and apart from any file format: texts and lines in millimetres
 * from the page's upper left corner, y down. From the same marks the PDF is written and the preview
 * drawn.
 */

/** `#rrggbb`. */
export type Ink = string;

export interface TextMark {
  readonly kind: 'text';
  /** Left end of the baseline. */
  readonly x: number;
  readonly y: number;
  readonly text: string;
  /** Height of the type, points. */
  readonly size: number;
  readonly bold: boolean;
  readonly ink: Ink;
  /** Degrees counter-clockwise about x, y. */
  readonly turn: number;
}

export interface LineMark {
  readonly kind: 'line';
  /** x, y, x, y, … */
  readonly points: readonly number[];
  readonly closed: boolean;
  readonly stroke: Ink | null;
  /** Of the stroke, mm. */
  readonly width: number;
  readonly fill: Ink | null;
  /** Lengths of dash and gap, mm; empty for a whole line. */
  readonly dash: readonly number[];
}

export type Mark = TextMark | LineMark;

export interface Page {
  /** Size of the paper, mm. */
  readonly width: number;
  readonly height: number;
  readonly marks: readonly Mark[];
}

/** Colours of the sheet: dark enough to print well in grey. */
export const inks = {
  ink: '#1e2427',
  soft: '#565f63',
  line: '#b9bdb8',
  faint: '#e6e3da',
  band: '#f4f1e9',
  accent: '#1f4e5f',
  warn: '#8a3b12',
  white: '#ffffff',
} as const;

/** A line of one stroke: open and black and thin unless said otherwise. */
export function line(points: readonly number[], look: Partial<LineMark> = {}): LineMark {
  return {
    kind: 'line',
    points,
    closed: false,
    stroke: inks.ink,
    width: 0.2,
    fill: null,
    dash: [],
    ...look,
  };
}

/** A box from its upper left corner. */
export function box(
  [x, y, width, height]: readonly [number, number, number, number],
  look: Partial<LineMark> = {},
): LineMark {
  const points = [x, y, x + width, y, x + width, y + height, x, y + height];
  return line(points, { closed: true, ...look });
}
