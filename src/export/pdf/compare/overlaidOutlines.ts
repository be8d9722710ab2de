/** Side and end outlines of two baskets, one over the other, all at one scale. */
import { comparePageWords } from '#words/comparePage.ts';
import type { Outline, OutlineView } from '../../../mesh/outline.ts';
import { outline } from '../../../mesh/outline.ts';
import type { Basket } from '../../../model/basket.ts';
import type { Mark } from '../page/mark.ts';
import { inks, line } from '../page/mark.ts';
import type { Ruler } from '../page/ruler.ts';
import { words } from '../page/words.ts';
import { sideInk } from './sideInk.ts';

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
  const scale = Math.min((width - gap - 2 * table) / wide, (height - 8) / high);
  let x = left + (width - gap - scale * wide) / 2;
  const ground = top + scale * high + 1;
  const marks = views.flatMap((view) => {
    const start = x;
    x += scale * (view.right - view.left) + gap;
    const placed = (flat: readonly number[]) =>
      flat.map((value, at) =>
        at % 2 === 0 ? start + scale * (value - view.left) : ground - scale * value,
      );
    const end = start + scale * (view.right - view.left);
    return [
      line([start - table, ground, end + table, ground], { stroke: inks.soft, width: 0.3 }),
      line(placed(view.a.silhouette), { ...sideInk.a, closed: true, width: 0.55 }),
      line(placed(view.b.silhouette), { ...sideInk.b, closed: true, width: 0.55 }),
      words(ruler, view.title, (start + end) / 2, ground + 4.5, {
        size: 8,
        ink: inks.soft,
        align: 'middle',
      }),
    ];
  });
  return { marks, height: scale * high + 8 };
}

interface BothOutlines {
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
    title: comparePageWords.view[view],
    a: one,
    b: other,
    left: Math.min(one.left, other.left),
    right: Math.max(one.right, other.right),
    top: Math.max(one.top, other.top),
  };
}
