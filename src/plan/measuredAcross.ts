/** Length and width of rows as woven, where the maker measured them beside the tape girth. */
import { z } from 'zod';
import { documentWords } from '#words/document.ts';
import { refusalWords } from '#words/refusals.ts';
import { keysOf } from './allowed.ts';
import { rowKey } from './girthPoints.ts';
import { limits } from './limits.ts';
import { length } from './numbers.ts';

const { least, most } = limits.across;

const sizes = {
  length: length(least, most, documentWords.plan.measuredLength).exactOptional(),
  width: length(least, most, documentWords.plan.measuredWidth).exactOptional(),
};

const { rowKey: rowKeyAllowed, sizesByRow, someSize } = refusalWords.allowed;

/** Row numbers written as keys, each with what was measured across. */
export const measuredAcross = z
  .record(
    z.string().regex(rowKey, { error: rowKeyAllowed }),
    z
      .strictObject(sizes, { error: keysOf(sizes) })
      .refine((read) => read.length !== undefined || read.width !== undefined, { error: someSize }),
    {
      error: (issue) => (issue.code === 'invalid_key' ? rowKeyAllowed : sizesByRow),
    },
  )
  .meta({ description: documentWords.plan.measuredAcross });
