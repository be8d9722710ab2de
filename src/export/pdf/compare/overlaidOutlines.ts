/** Side and end outlines of two baskets, one over the other, all at one scale. */
import { comparePageWords } from '#words/comparePage.ts';
import { planLetters } from '#words/planLetters.ts';
import type { Outline, OutlineView } from '../../../mesh/outline.ts';
import { outline } from '../../../mesh/outline.ts';
import type { Basket } from '../../../model/basket.ts';
import type { Unit } from '../../../plan/schema.ts';
import { formatLength } from '../../../plan/units.ts';
import type { Mark } from '../page/mark.ts';
import { inks, line } from '../page/mark.ts';
import type { Ruler } from '../page/ruler.ts';
import { words } from '../page/words.ts';
import { sideInk } from './sideInk.ts';

/** Height of the lines under the outlines, mm. */
const captions = 15;

/** The drawing in a place `width` × at most `height` mm from its upper left corner, and what it takes. */
export function overlaidOutlines(
  a: Basket,
  b: Basket,
  ruler: Ruler,
  [left, top, width, height]: readonly [number, number, number, number],
): { readonly marks: Mark[]; readonly height: number } {
  const views = (['side', 'end'] as const).map((view) => both(a, b, view));
  const wide = views.reduce((sum, view) => sum + view.right - view.left, 0);
  const high = Math.max(...views.map((view) => view.top));
  const gap = 14;
  const table = 3;
  const { unit } = a.plan.display;
  const look = { size: 7.5, ink: inks.soft, align: 'middle' } as const;
  const scale = Math.min((width - gap - 2 * table) / wide, (height - captions) / high);
  // each stands over the middle of its captions, which may be the wider
  const slots = views.map(({ view, left: from, right: to }) => {
    const lines = [sizes(a, view, 'a', unit), sizes(b, view, 'b', unit)] as const;
    const long = Math.max(...lines.map((text) => ruler.width(text, look.size, false)));
    return { lines, room: Math.max(scale * (to - from), long - gap / 2) };
  });
  let x = left + (width - gap - slots.reduce((sum, { room }) => sum + room, 0)) / 2;
  const ground = top + scale * high + 1;
  const marks = views.flatMap((view, at) => {
    const { lines = ['', ''], room = 0 } = slots[at] ?? {};
    const start = x + (room - scale * (view.right - view.left)) / 2;
    x += room + gap;
    const placed = (flat: readonly number[]) =>
      flat.map((value, place) =>
        place % 2 === 0 ? start + scale * (value - view.left) : ground - scale * value,
      );
    const end = start + scale * (view.right - view.left);
    return [
      line([start - table, ground, end + table, ground], { stroke: inks.soft, width: 0.3 }),
      line(placed(view.a.silhouette), { ...sideInk.a, closed: true, width: 0.55 }),
      line(placed(view.b.silhouette), { ...sideInk.b, closed: true, width: 0.55 }),
      words(ruler, view.title, (start + end) / 2, ground + 4.5, { ...look, bold: true }),
      words(ruler, lines[0], (start + end) / 2, ground + 8.3, look),
      words(ruler, lines[1], (start + end) / 2, ground + 12.1, look),
    ];
  });
  return { marks, height: scale * high + captions };
}

/** What an outline measures, as the view shows it. */
function sizes({ summary }: Basket, view: OutlineView, side: 'a' | 'b', unit: Unit): string {
  const length = (mm: number) => formatLength(mm, unit);
  const [base, rim] =
    view === 'side'
      ? [summary.baseLength, summary.rim.length]
      : [summary.baseWidth, summary.rim.width];
  return comparePageWords.sizes(
    planLetters[side],
    length(base),
    length(rim),
    length(summary.height),
  );
}

interface BothOutlines {
  readonly view: OutlineView;
  readonly title: string;
  readonly a: Outline;
  readonly b: Outline;
  readonly left: number;
  readonly right: number;
  readonly top: number;
}

function both(a: Basket, b: Basket, view: OutlineView): BothOutlines {
  const [one, other] = [outline(a, view), outline(b, view)];
  return {
    view,
    title: comparePageWords.view[view],
    a: one,
    b: other,
    left: Math.min(one.left, other.left),
    right: Math.max(one.right, other.right),
    top: Math.max(one.top, other.top),
  };
}
