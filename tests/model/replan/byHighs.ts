import highsLoader from 'highs';
import type { Way } from '../../../src/model/replan/gentlest.ts';

const highs = await highsLoader();

/** The gentlest way, as a solver for any linear and quadratic program finds it. */
export function changesByHighs({ before, after, least, most, sums, ceiling }: Way): Float64Array {
  const n = least.length;
  const upTo = (rows: number) => Array.from({ length: rows }, (_, k) => `x${k + 1}`).join(' + ');
  const squares = Array.from({ length: n }, (_, i) => {
    const weight = i + 1 < n || after !== null ? 4 : 2;
    return `${weight} x${i + 1}^2${i > 0 ? ` - 4 x${i} * x${i + 1}` : ''}`;
  });
  const problem = [
    'Minimize',
    ` obj: ${-2 * before} x1 + ${-2 * (after ?? 0)} x${n} + [ ${squares.join(' + ')} ] / 2`,
    'Subject To',
    ...sums.map(({ rows, sum }, i) => ` sum${i}: ${upTo(rows)} = ${sum}`),
    ...Array.from(ceiling ?? [], (top, k) => ` top${k}: ${upTo(k + 1)} <= ${top}`),
    'Bounds',
    ...Array.from({ length: n }, (_, k) => ` ${least[k]} <= x${k + 1} <= ${most[k]}`),
    'End',
  ].join('\n');
  const { Status, Columns } = highs.solve(problem.replaceAll('+ -', '- '));
  if (Status !== 'Optimal') throw new Error(`the general solver says: ${Status}`);
  return Float64Array.from({ length: n }, (_, k) => {
    const column = Columns[`x${k + 1}`];
    return column && 'Primal' in column ? (column.Primal ?? Number.NaN) : Number.NaN;
  });
}
