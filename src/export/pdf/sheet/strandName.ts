import type { Stock } from '../../../model/quantity/part.ts';
import type { Unit } from '../../../plan/schema.ts';
import { unitLength } from '../../../plan/units.ts';

const sections: Readonly<Record<Stock['section'], string>> = {
  flat: 'flat',
  'flat-oval': 'flat oval',
  'half-round': 'half round',
  round: 'round',
  cane: 'cane',
};

/** Flat strand is seldom thicker than this, mm. */
const thick = 2;

/**
 * A strand as makers ask for it: `11/64 in flat oval`, `6.4 mm flat`. Widths that are a whole number
 * of 64ths of an inch, as reed is sold, are written so; all others, round reed and cane in mm.
 */
export function strandName({ section, width, thickness, colour }: Stock, unit: Unit): string {
  const dyed = colour === 'natural' ? '' : `, ${colour}`;
  const isThick = section === 'flat' && thickness >= thick;
  const heavy = isThick ? ` ${Math.round(thickness * 10) / 10} mm thick` : '';
  const sold = section === 'round' || section === 'cane' ? 'mm' : unit;
  return `${strandWidth(width, sold)} ${sections[section]}${heavy}${dyed}`;
}

/** Width of a strand, as it is sold. */
function strandWidth(width: number, unit: Unit): string {
  const millimetres = `${Math.round(width * 10) / 10} mm`;
  if (unit !== 'in') return millimetres;
  const parts = Math.round((64 * width) / unitLength.in);
  if (parts < 8 || Math.abs(parts / 64 - width / unitLength.in) > 0.006) return millimetres;
  const divisor = [64, 32, 16, 8, 4, 2, 1].find((one) => parts % one === 0) ?? 1;
  const [top, bottom] = [parts / divisor, 64 / divisor];
  if (bottom === 1) return `${top} in`;
  const whole = Math.floor(top / bottom);
  return `${whole ? `${whole} ` : ''}${top % bottom}/${bottom} in`;
}
