import type { Mark } from '../page/mark.ts';
import { inks, line } from '../page/mark.ts';
import type { Ruler } from '../page/ruler.ts';
import { words } from '../page/words.ts';

const tick = 1.2;
/** Of its letters, pt. */
export const dimensionSize = 8;

/** A dimension line between two points of one level or one upright, mm, with its text beside it. */
export function dimension(
  ruler: Ruler,
  from: readonly [number, number],
  to: readonly [number, number],
  text: string,
): Mark[] {
  const upright = from[0] === to[0];
  const [dx, dy] = upright ? [tick, 0] : [0, tick];
  const end = ([x, y]: readonly [number, number]) =>
    line([x - dx, y - dy, x + dx, y + dy], { stroke: inks.accent });
  const middle = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2] as const;
  const look = { size: dimensionSize, ink: inks.accent, align: 'middle' } as const;
  return [
    line([...from, ...to], { stroke: inks.accent, width: 0.15 }),
    end(from),
    end(to),
    upright
      ? words(ruler, text, middle[0] - 1.4, middle[1], { ...look, turn: 90 })
      : words(ruler, text, middle[0], middle[1] - 1.4, look),
  ];
}
