import { benchWords } from '#words/bench.ts';
import { listWords } from '#words/lists.ts';
import { unitWords } from '#words/units.ts';
import { formatLength, shownChange } from '../../plan/units.ts';
import type { BenchWork } from './benchWork.ts';
import { tellable } from './benchWork.ts';

const words = benchWords.across;

/** Rows told; the last ones measured say the most. */
const most = 4;

/** Length and width as measured beside those that the shape comes to with its girths; nothing measured, nothing shown. */
export function AcrossRows({ work }: { readonly work: BenchWork }) {
  const { record, table, plan } = work;
  const { unit } = plan.display;
  const rows = Object.keys(record.across)
    .map(Number)
    .toSorted((a, b) => b - a)
    .slice(0, most);
  if (!table || rows.length === 0) return null;
  const length = (mm: number | undefined) =>
    mm === undefined ? '–' : formatLength(mm, unit, { withUnit: false });
  return (
    <>
      <table className="replan-rows across-rows">
        <caption>{words.title(unitWords.length[unit])}</caption>
        <thead>
          <tr>
            <th scope="col">{benchWords.rowColumn}</th>
            <th scope="col">{words.columns.measured}</th>
            <th scope="col">{words.columns.shape}</th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => {
            const shape = table.rows[row - 1];
            const had = record.across[row];
            return (
              <tr key={row}>
                <th scope="row">{row}</th>
                <td>
                  <strong>
                    {length(had?.length)} × {length(had?.width)}
                  </strong>
                </td>
                <td>
                  {length(shape?.length)} × {length(shape?.width)}
                </td>
              </tr>
            );
          })}
        </tbody>
      </table>
      <p className="soft">{inWords(work, rows[0] ?? 0)}</p>
    </>
  );
}

/** How the last row measured departs from its shape, and what the figures are taken from. */
function inWords({ record, table, plan }: BenchWork, row: number): string {
  const shape = table?.rows[row - 1];
  const { length, width } = record.across[row] ?? {};
  const apart = [
    apartText(length, shape?.length, words.longer, words.shorter, plan.display.unit),
    apartText(width, shape?.width, words.wider, words.narrower, plan.display.unit),
  ].filter((text) => text !== '');
  const told = apart.length === 0 ? words.asShape(row) : words.isApart(row, apart);
  return listWords.sentences([told, words.worksSo]);
}

function apartText(
  had: number | undefined,
  shape: number | undefined,
  more: (by: string) => string,
  less: (by: string) => string,
  unit: BenchWork['plan']['display']['unit'],
): string {
  if (had === undefined || shape === undefined) return '';
  const off = shownChange(shape, had, unit);
  const said = off > 0 ? more : less;
  return Math.abs(had - shape) > tellable && off !== 0
    ? said(formatLength(Math.abs(off), unit))
    : '';
}
