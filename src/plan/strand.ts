/** One kind of strand: the section of a stake, a weaver or a rim hoop. */
import { z } from 'zod';
import { documentWords } from '#words/document.ts';
import { keysOf } from './allowed.ts';
import { limits } from './limits.ts';
import { length, oneOf } from './numbers.ts';

export const strandSections = ['flat', 'flat-oval', 'half-round', 'round'] as const;

const shape = {
  section: oneOf(strandSections, documentWords.strand.section),
  width: length(limits.width.least, limits.width.most, documentWords.strand.width),
  thickness: length(limits.thickness.least, limits.thickness.most, documentWords.strand.thickness),
};

export const strandSchema = z.strictObject(shape, { error: keysOf(shape) });
