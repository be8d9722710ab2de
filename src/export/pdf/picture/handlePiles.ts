/** The handle as painted: a wrapped bow over the rim. */
import type { Basket } from '../../../model/basket.ts';
import { strandColour } from '../../../plan/dyes.ts';
import type { Vector } from './camera.ts';
import type { Pile, Ribbon } from './ribbon.ts';

const pieces = 60;

/** One pile a piece of the bow; none where the plan has no handle. */
export function handlePiles(basket: Basket): Pile[] {
  const { plan, summary } = basket;
  const { handle } = plan;
  if (handle.kind === 'none') return [];
  const isFixed = handle.kind === 'fixed';
  const axis = isFixed && handle.across === 'length' ? 0 : 1;
  const span = isFixed ? handle.spread : summary.rim.width + 2 * plan.rim.hoop.thickness;
  const { rise, bow } = handle;
  const foot = rimHeight(basket, axis);
  // From under one hoop straight up past the rim, over in half an ellipse, and down again.
  const path = Array.from({ length: pieces + 1 }, (_, at): readonly [number, number] => {
    const angle = (Math.PI * at) / pieces;
    return [-(span / 2) * Math.cos(angle), foot + rise * Math.sin(angle) ** 0.85];
  });
  const low = foot - plan.rim.hoop.width;
  path.unshift([-span / 2, low]);
  path.push([span / 2, low]);
  const place = ([level, height]: readonly [number, number], aside: number): Vector =>
    axis === 0 ? [level, aside, height] : [aside, level, height];
  return path.slice(1).map((to, at): Pile => {
    const from = path[at] ?? to;
    const [a, b] = [place(from, -bow.width / 2), place(to, -bow.width / 2)];
    const [c, d] = [place(to, bow.width / 2), place(from, bow.width / 2)];
    const [across, up] = [to[0] - from[0], to[1] - from[1]];
    const size = Math.hypot(across, up) || 1;
    const ribbon: Ribbon = {
      outline: [a, b, c, d],
      edges: [
        [a, b],
        [d, c],
        [b, c],
      ],
      facing: place([-up / size, Math.abs(across) / size], 0),
      light: 0.95,
      colour: strandColour('natural'),
    };
    const middle = place([(from[0] + to[0]) / 2, (from[1] + to[1]) / 2], 0);
    return { place: middle, before: 4, ribbons: [ribbon] };
  });
}

/** Height of the wall's top in the middle of the sides that the bow stands on, mm. */
function rimHeight({ net, positions }: Basket, axis: 0 | 1): number {
  const row = net.rows.at(-1);
  const other = axis === 0 ? 1 : 0;
  const nodes = Array.from(row?.nodes ?? []).toSorted(
    (one, two) =>
      Math.abs(positions[3 * one + other] ?? 0) - Math.abs(positions[3 * two + other] ?? 0),
  );
  const near = nodes.slice(0, 2).map((node) => positions[3 * node + 2] ?? 0);
  return near.reduce((sum, z) => sum + z, 0) / near.length + (row?.pitch ?? 0) / 2;
}
