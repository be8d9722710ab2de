/** The lines of the row chart, from the plan and from the settled basket. */
import type { Basket, Finding, RowReading } from '../model/basket.ts';
import type { Plan } from '../plan/schema.ts';

export interface TableRow {
  readonly row: number;
  /** Planned girth in the middle of the wall, mm. */
  readonly planned: number;
  readonly isByHand: boolean;
  /** Place of the row's band, from 1, and the colour name of its weaver. */
  readonly band: number;
  readonly colour: string;
  readonly weave: string;
  /** As settled; undefined until it is. */
  readonly read: RowReading | undefined;
  readonly findings: readonly Finding[];
}

const none: readonly Finding[] = [];

/** Row 1 to the last; `girths[k]` is the planned girth of row `k`, mm. */
export function tableRows(
  plan: Plan,
  girths: Float64Array,
  basket: Pick<Basket, 'rows' | 'findings'> | null,
): readonly TableRow[] {
  const marks = findingsByRow(basket?.findings ?? none);
  const lines: TableRow[] = [];
  plan.bands.forEach(({ rows, colour, weave }, index) => {
    for (let count = 0; count < rows; count++) {
      const row = lines.length + 1;
      lines.push({
        row,
        planned: girths[row] ?? Number.NaN,
        isByHand: plan.girthLine.rows[row] !== undefined,
        band: index + 1,
        colour,
        weave,
        read: basket?.rows[row - 1],
        findings: marks.get(row) ?? none,
      });
    }
  });
  return lines;
}

function findingsByRow(findings: readonly Finding[]): Map<number, Finding[]> {
  const byRow = new Map<number, Finding[]>();
  for (const finding of findings) {
    const rows = new Set(finding.row === null ? finding.rows : [finding.row, ...finding.rows]);
    for (const row of rows) byRow.set(row, [...(byRow.get(row) ?? []), finding]);
  }
  return byRow;
}
