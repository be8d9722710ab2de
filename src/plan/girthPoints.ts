/** The girth line as the maker gives it: a few points, and single rows set by hand. */
import { z } from 'zod';
import { keysOf } from './allowed.ts';
import { limits } from './limits.ts';
import { count, length } from './numbers.ts';

const girth = length(limits.girth.least, limits.girth.most, 'girth of the row');

const point = {
  row: count(1, limits.rows.most, 'row, counted from the base'),
  girth,
};

const { least, most } = limits.points;
const several = `a list of ${least} to ${most} points`;

/** A row number written as a key. */
export const rowKey = {
  pattern: /^[1-9][0-9]{0,3}$/,
  allowed: 'a row number as its key, such as "17"',
} as const;

/** Row numbers written as keys, each with a girth. */
export function girthByRow(what: string) {
  return z
    .record(z.string().regex(rowKey.pattern, { error: rowKey.allowed }), girth, {
      error: (issue) =>
        issue.code === 'invalid_key' ? rowKey.allowed : 'an object of girths by row: { "17": 592 }',
    })
    .meta({ description: what });
}

const shape = {
  points: z
    .array(z.strictObject(point, { error: keysOf(point) }), { error: several })
    .min(least, { error: several })
    .max(most, { error: several }),
  rows: girthByRow('rows set by hand, which overrule the points').default({}),
};

export const girthLineSchema = z.strictObject(shape, { error: keysOf(shape) });
