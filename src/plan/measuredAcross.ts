/** Length and width of rows as woven, where the maker measured them beside the tape girth. */
import { z } from 'zod';
import { keysOf } from './allowed.ts';
import { rowKey } from './girthPoints.ts';
import { limits } from './limits.ts';
import { length } from './numbers.ts';

const { least, most } = limits.across;

const sizes = {
  length: length(least, most, 'length of the row, outside').exactOptional(),
  width: length(least, most, 'width of the row, outside').exactOptional(),
};

const some = 'a length, a width, or both';

/** Row numbers written as keys, each with what was measured across. */
export const measuredAcross = z
  .record(
    z.string().regex(rowKey.pattern, { error: rowKey.allowed }),
    z
      .strictObject(sizes, { error: keysOf(sizes) })
      .refine((read) => read.length !== undefined || read.width !== undefined, { error: some }),
    {
      error: (issue) =>
        issue.code === 'invalid_key'
          ? rowKey.allowed
          : 'an object of sizes by row: { "9": { "length": 240, "width": 210 } }',
    },
  )
  .meta({ description: 'length and width as woven, outside, by row' });
