import { colourWords } from '#words/colours.ts';
import { strandNameWords as w } from '#words/strandNames.ts';
import type { Stock } from '../../../model/quantity/part.ts';
import type { Unit } from '../../../plan/schema.ts';
import { unitLength } from '../../../plan/units.ts';

/** Flat strand is seldom thicker than this, mm. */
const thick = 2;

/**
 * A strand as makers ask for it: `11/64 in flat oval`, `6.4 mm flat`. Widths that are a whole number
 * of 64ths of an inch, as reed is sold, are written so; all others, round reed and cane in mm.
 */
export function strandName({ section, width, thickness, colour }: Stock, unit: Unit): string {
  const sold = section === 'round' || section === 'cane' ? 'mm' : unit;
  const [wide, name] = [strandWidth(width, sold), w.section[section]];
  const isDyed = colour !== 'natural';
  // a plan may have a name of its own for a colour
  const dye = (Object.hasOwn(colourWords, colour) ? colourWords[colour] : undefined) ?? colour;
  if (section === 'flat' && thickness >= thick) {
    const heavy = millimetres(thickness);
    return isDyed ? w.thickDyed(wide, name, heavy, dye) : w.thick(wide, name, heavy);
  }
  return isDyed ? w.dyed(wide, name, dye) : w.plain(wide, name);
}

/** Width of a strand, as it is sold. */
function strandWidth(width: number, unit: Unit): string {
  if (unit !== 'in') return millimetres(width);
  const parts = Math.round((64 * width) / unitLength.in);
  if (parts < 8 || Math.abs(parts / 64 - width / unitLength.in) > 0.006) {
    return millimetres(width);
  }
  const divisor = [64, 32, 16, 8, 4, 2, 1].find((one) => parts % one === 0) ?? 1;
  const [top, bottom] = [parts / divisor, 64 / divisor];
  if (bottom === 1) return w.inches(`${top}`);
  const whole = Math.floor(top / bottom);
  return w.inches(`${whole ? `${whole} ` : ''}${top % bottom}/${bottom}`);
}

function millimetres(mm: number): string {
  return w.millimetres(Math.round(mm * 10) / 10);
}
