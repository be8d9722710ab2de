/** What was measured of a basket, and the plan that holds it. */
import { rowCount } from './counts.ts';
import type { Across, Plan } from './schema.ts';

export interface Measures {
  /** Tape girth by row, mm. */
  readonly girths: Readonly<Record<string, number>>;
  /** Length and width by row, mm outside. */
  readonly across: Readonly<Record<string, Across>>;
}

/** What `plan` holds of measures. */
export function measuresOf({ measured, measuredAcross }: Plan): Measures {
  return { girths: measured, across: measuredAcross ?? {} };
}

/** `plan` with these measures, as far as it has such rows; `plan` itself where it has them already. */
export function withMeasures(plan: Plan, { girths, across }: Measures): Plan {
  const rows = rowCount(plan);
  const { measuredAcross: _before, ...rest } = plan;
  const widths = upTo(rows, across);
  const next: Plan = {
    ...rest,
    measured: upTo(rows, girths),
    ...(Object.keys(widths).length > 0 ? { measuredAcross: widths } : {}),
  };
  const isSame = JSON.stringify(measuresOf(next)) === JSON.stringify(measuresOf(plan));
  return isSame ? plan : next;
}

/** What lies on rows over `rows`: added at the bench, the plan has none such. */
export function beyond<T>(
  rows: number,
  byRow: Readonly<Record<string, T>>,
): Readonly<Record<string, T>> {
  return Object.fromEntries(Object.entries(byRow).filter(([row]) => Number(row) > rows));
}

function upTo<T>(rows: number, byRow: Readonly<Record<string, T>>): Readonly<Record<string, T>> {
  return Object.fromEntries(Object.entries(byRow).filter(([row]) => Number(row) <= rows));
}
