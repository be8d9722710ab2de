import { pdfPageWords } from '#words/pdfPage.ts';
import type { Unit } from '../../../plan/schema.ts';

export const papers = ['a4', 'letter'] as const;
export type Paper = (typeof papers)[number];

/** Upright paper, mm. */
export interface PaperSize {
  readonly width: number;
  readonly height: number;
}

export const paperSize: Readonly<Record<Paper, PaperSize>> = {
  a4: { width: 210, height: 297 },
  letter: { width: 215.9, height: 279.4 },
};

export const paperTitle: Readonly<Record<Paper, string>> = pdfPageWords.papers;

/** The paper that goes with a plan's unit: Letter for inches, else A4. */
export function paperFor(unit: Unit): Paper {
  return unit === 'in' ? 'letter' : 'a4';
}
