/** Bars of known length: if they do not measure right, the page was not printed at full size. */
import { gaugeWords } from '#words/gauges.ts';
import type { Mark } from '../page/mark.ts';
import { line } from '../page/mark.ts';
import type { PaperSize } from '../page/paper.ts';
import type { Ruler } from '../page/ruler.ts';
import { words } from '../page/words.ts';

/** Nothing else is drawn in this colour and width. */
const barLine = { stroke: '#8a3b12', width: 0.5 } as const;

/** Room that the bars take at the top of a page, mm. */
export const barRoom = 20;

/** A bar of 100 mm and one of 4 in across the top of the page. */
export function checkBars(ruler: Ruler, paper: PaperSize): Mark[] {
  const x = 15;
  const bar = (y: number, length: number, text: string): Mark[] => [
    line([x, y, x + length, y], barLine),
    line([x, y - 1.5, x, y + 1.5], barLine),
    line([x + length, y - 1.5, x + length, y + 1.5], barLine),
    words(ruler, text, x + length + 3, y + 1, { size: 8 }),
  ];
  return [
    ...bar(11, 100, gaugeWords.bar.metric),
    ...bar(17, 101.6, gaugeWords.bar.inches),
    words(ruler, gaugeWords.printFull, paper.width - 15, 14, {
      size: 8,
      align: 'right',
    }),
  ];
}
