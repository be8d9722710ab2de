import { formatLength } from '../../plan/units.ts';
import type { BenchWork } from './benchWork.ts';
import { tellable } from './benchWork.ts';

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
        <caption>Length × width, {unit}</caption>
        <thead>
          <tr>
            <th scope="col">Row</th>
            <th scope="col">Measured</th>
            <th scope="col">Its shape</th>
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
    apartText(length, shape?.length, 'longer', 'shorter', plan.display.unit),
    apartText(width, shape?.width, 'wider', 'narrower', plan.display.unit),
  ].filter((text) => text !== '');
  const told =
    apart.length === 0
      ? `Row ${row} has the shape that its girth settles to.`
      : `Row ${row} is ${apart.join(' and ')} than its girth settles to: press it round while it is damp, or leave it so.`;
  return `${told} The shape is worked out from girths and height; length and width are set beside it and do not move it.`;
}

function apartText(
  had: number | undefined,
  shape: number | undefined,
  more: string,
  less: string,
  unit: BenchWork['plan']['display']['unit'],
): string {
  if (had === undefined || shape === undefined) return '';
  const off = had - shape;
  return Math.abs(off) > tellable
    ? `${formatLength(Math.abs(off), unit)} ${off > 0 ? more : less}`
    : '';
}
