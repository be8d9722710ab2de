import type { RowTints, TintKind } from '../../mesh/rowTints.ts';
import { measureText, wholeDegrees } from '../../plan/measureText.ts';
import type { Unit } from '../../plan/schema.ts';

/** What the colours of the rows stand for. */
export interface TintScale {
  readonly kind: TintKind;
  readonly tints: RowTints;
  readonly unit: Unit;
}

/** The least and the most, as they stand at the ends of the scale. */
export function endsOf({ kind, tints, unit }: TintScale): readonly [string, string] {
  return [valueText(kind, tints.least, unit), valueText(kind, tints.most, unit)];
}

function valueText(kind: TintKind, value: number, unit: Unit): string {
  if (kind === 'lean') return wholeDegrees(value);
  // in decimals, as a gap that is nearly closed, or less than closed, is read off no tape
  return kind === 'gap' ? measureText('gap', value, unit) : `${(100 * value).toFixed(2)} %`;
}
