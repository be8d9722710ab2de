import type { Unit } from '../plan/schema.ts';
import { unitLength } from '../plan/units.ts';

const decimals: Readonly<Record<Unit, number>> = { in: 3, cm: 2, mm: 1 };

/** How much one stake gap opens or closes, mm in; too small for a tape, so as a decimal: `+0.006`. */
export function gapChange(mm: number, unit: Unit): string {
  if (!Number.isFinite(mm)) return '–';
  const text = (Math.abs(mm) / unitLength[unit]).toFixed(decimals[unit]);
  if (Number(text) === 0) return '0';
  return mm < 0 ? `−${text}` : `+${text}`;
}
