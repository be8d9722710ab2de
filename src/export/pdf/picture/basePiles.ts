/** The base as seen through the mouth: its stakes, over and under one another. */
import { cross } from '../../../mesh/finish/vector.ts';
import type { Basket } from '../../../model/basket.ts';
import { strandColour } from '../../../plan/dyes.ts';
import { direction, middle, moved } from './camera.ts';
import type { Nodes } from './nodes.ts';
import type { Pile, Ribbon } from './ribbon.ts';
import { ribbonAlong } from './ribbon.ts';

const boardColour = [196, 160, 118] as const;

/** One pile a node of the base; which stake lies on top changes from one to the next. */
export function basePiles({ net, plan }: Basket, { at, normal }: Nodes): Pile[] {
  if (plan.base.kind === 'board') return floorPiles(net, at, boardColour);
  const byNode = new Map<number, { readonly ribbon: Ribbon; readonly order: number }[]>();
  net.stakes.forEach(({ nodes, edge, strand }, index) => {
    const from = Math.max(0, edge[0]);
    const to = edge[1] < 0 ? nodes.length - 1 : edge[1];
    for (let place = from; place <= to; place += 1) {
      const node = nodes[place] ?? 0;
      const [before, here, after] = [
        at(nodes[Math.max(from, place - 1)] ?? 0),
        at(node),
        at(nodes[Math.min(to, place + 1)] ?? 0),
      ];
      const inward = moved([0, 0, 0], normal(node), -1);
      const across = cross(direction(before, after), inward);
      const ribbon = ribbonAlong(
        [middle(before, here), here, middle(here, after)],
        [across, across, across],
        strand.width,
        { facing: inward, light: 0.7, colour: strandColour('natural') },
      );
      const list = byNode.get(node) ?? [];
      list.push({ ribbon, order: (place + index) % 2 });
      byNode.set(node, list);
    }
  });
  const woven = plan.base.kind === 'wheel' ? floorPiles(net, at, strandColour('natural')) : [];
  const stakes = [...byNode].map(([node, list]) => ({
    place: at(node),
    before: -2,
    ribbons: list.toSorted((one, other) => one.order - other.order).map(({ ribbon }) => ribbon),
  }));
  return [...woven, ...stakes];
}

/** The cells of a base that lets no light through: woven flat, or a board. */
function floorPiles(net: Basket['net'], at: Nodes['at'], colour: Ribbon['colour']): Pile[] {
  const wall = Math.min(...(net.rows[1]?.nodes ?? []));
  const piles: Pile[] = [];
  const add = (nodes: readonly number[]) => {
    if (nodes.some((node) => node >= wall)) return;
    const outline = nodes.map(at);
    const [first] = outline;
    if (!first) return;
    const floor: Ribbon = { outline, edges: [], facing: [0, 0, 1], light: 0.6, colour };
    piles.push({ place: first, before: -10, ribbons: [floor] });
  };
  for (let cell = 0; cell + 3 < net.quads.length; cell += 4) {
    add(Array.from(net.quads.subarray(cell, cell + 4)));
  }
  for (let cell = 0; cell + 2 < net.triangles.length; cell += 3) {
    add(Array.from(net.triangles.subarray(cell, cell + 3)));
  }
  return piles;
}
