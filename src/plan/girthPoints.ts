/** The girth line as the maker gives it: a few points, and single rows set by hand. */
import { z } from 'zod';
import { documentWords } from '#words/document.ts';
import { refusalWords } from '#words/refusals.ts';
import { keysOf } from './allowed.ts';
import { limits } from './limits.ts';
import { count, length } from './numbers.ts';

const girth = length(limits.girth.least, limits.girth.most, documentWords.girthLine.girth);

const point = {
  row: count(1, limits.rows.most, documentWords.girthLine.row),
  girth,
};

const { least, most } = limits.points;
const several = refusalWords.allowed.points(`${least}`, `${most}`);

/** A row number written as a key. */
export const rowKey = /^[1-9][0-9]{0,3}$/;

/** Row numbers written as keys, each with a girth. */
export function girthByRow(what: string) {
  const { rowKey: rowKeyAllowed, girthByRow: girths } = refusalWords.allowed;
  return z
    .record(z.string().regex(rowKey, { error: rowKeyAllowed }), girth, {
      error: (issue) => (issue.code === 'invalid_key' ? rowKeyAllowed : girths),
    })
    .meta({ description: what });
}

const shape = {
  points: z
    .array(z.strictObject(point, { error: keysOf(point) }), { error: several })
    .min(least, { error: several })
    .max(most, { error: several }),
  rows: girthByRow(documentWords.girthLine.rows).default({}),
};

export const girthLineSchema = z.strictObject(shape, { error: keysOf(shape) });
