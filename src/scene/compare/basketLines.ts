/**
 * Lines on the outside of a basket, as pairs of points in scene units: x, y, z, x, y, z, …
 * Hot loops over typed arrays: `as number` says that an index is inside.
 */
import { nodeNormals } from '../../mesh/surface.ts';
import type { Basket } from '../../model/basket.ts';
import { centimetres } from '../toThree.ts';

/** 'marks': base edge, widest row and rim. 'rows': some ten rows. */
export type LineChoice = 'marks' | 'rows';

/** The lines chosen, lying `clear` mm outside the strands; that of the rim lies outside its hoop. */
export function basketLines(basket: Basket, choice: LineChoice, clear = 0.8): Float32Array {
  const { net, positions, plan, summary } = basket;
  const normals = nodeNormals(net, positions);
  const stake = plan.base.stake.thickness;
  const last = net.rows.length - 1;
  const marked = new Set([0, summary.belly.row, last]);
  const out: number[] = [];
  const add = (node: number, away: number) => {
    const [x, y, z] = [0, 1, 2].map(
      (axis) =>
        (positions[3 * node + axis] as number) + away * (normals[3 * node + axis] as number),
    ) as [number, number, number];
    out.push(centimetres * x, centimetres * z, -centimetres * y);
  };
  const every = Math.ceil(last / 10);
  net.rows.forEach(({ nodes, band }, row) => {
    const isChosen = choice === 'marks' ? marked.has(row) : choice === 'rows' && row % every === 0;
    if (!isChosen) return;
    const weaver = row === 0 ? 0 : (plan.bands[band]?.weaver.thickness ?? 0);
    const hoop = row === last ? plan.rim.hoop.thickness : 0;
    const away = stake / 2 + weaver + hoop + clear;
    nodes.forEach((node, at) => {
      add(node, away);
      add(nodes[(at + 1) % nodes.length] as number, away);
    });
  });
  return Float32Array.from(out);
}
