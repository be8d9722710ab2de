/** What stands over two compared baskets: their names, each with its letter and its line. */
import { comparePageWords } from '#words/comparePage.ts';
import { planLetters } from '#words/planLetters.ts';
import type { ComparedBaskets } from '../../compareCsv.ts';
import type { Mark } from '../page/mark.ts';
import { inks, line } from '../page/mark.ts';
import type { Ruler } from '../page/ruler.ts';
import { words, wrapped } from '../page/words.ts';
import { sideInk } from './sideInk.ts';

/** The head from `left` to `right`; it takes 20 mm from `top`. */
export function compareHead(
  { a, b }: ComparedBaskets,
  ruler: Ruler,
  left: number,
  right: number,
  top: number,
  day: string,
): Mark[] {
  const y = top + 5;
  const named = (side: 'a' | 'b', name: string, at: number) => [
    words(ruler, planLetters[side], left, at, {
      size: 11,
      bold: true,
      ink: sideInk[side].stroke ?? inks.ink,
    }),
    line([left + 5, at - 1.4, left + 19, at - 1.4], { ...sideInk[side], width: 0.7 }),
    words(ruler, wrapped(ruler, name, right - left - 22, 11)[0] ?? '', left + 22, at, { size: 11 }),
  ];
  return [
    words(ruler, comparePageWords.title, left, y, { size: 17, bold: true, ink: inks.accent }),
    words(ruler, day, right, y, { ink: inks.soft, align: 'right' }),
    ...named('a', a.plan.name, y + 8),
    ...named('b', b.plan.name, y + 14),
    line([left, y + 17.5, right, y + 17.5], { stroke: inks.accent, width: 0.4 }),
  ];
}
