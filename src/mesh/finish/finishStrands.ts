import type { Basket } from '../../model/basket.ts';
import { stride } from '../crossings.ts';
import type { Strand } from '../strandMesh.ts';
import { handleFeet, handleStrands } from './handleStrands.ts';
import type { RimLine } from './rimLine.ts';
import { rimLine } from './rimLine.ts';
import { rimSizes, rimStrands } from './rimStrands.ts';

/** Rim and handle of a basket as drawn, fitted to its settled rim. */
export function finishStrands(
  basket: Basket,
  normals: Float64Array,
  stakes: readonly Strand[],
  weavers: readonly Strand[],
): Strand[] {
  const line = standingOut(rimLine(basket, normals), basket, weavers);
  const feet = handleFeet(basket, line);
  // a stake beside a leg of the handle is cut: its place behind the hoop is taken
  const isFree = (end: number) =>
    !feet?.ends.some((foot) => {
      const apart = Math.abs(end - foot) % line.ends;
      return Math.min(apart, line.ends - apart) < feet.reach + 0.45;
    });
  const names = stakes.map(({ name }) => name);
  const rim = rimStrands(basket, line, isFree, names, feet?.legs ?? []);
  return feet ? [...rim, ...handleStrands(basket, line, rimSizes(basket, line), feet)] : rim;
}

/**
 * The line with what weavers of the last rows stand off their stakes, where those turn under them.
 * A hot loop over typed arrays: `!` says that an index is inside.
 */
function standingOut(
  line: RimLine,
  { net, plan, positions }: Basket,
  weavers: readonly Strand[],
): RimLine {
  const rows = net.rows.length - 1;
  let [outside, inside] = [0, 0];
  for (const { path, thickness } of weavers) {
    const { data, strand, count } = path;
    const touching = (plan.base.stake.thickness + thickness) / 2;
    for (let place = 0; place < count; place += 1) {
      const row = strand[place]!;
      if (row < rows - 1) continue;
      const at = place * stride;
      let [least, out] = [Number.POSITIVE_INFINITY, 0];
      // the stake that it lies on is the nearest
      for (const { nodes } of net.ends) {
        const node = 3 * nodes[row]!;
        const x = data[at]! - positions[node]!;
        const y = data[at + 1]! - positions[node + 1]!;
        const z = data[at + 2]! - positions[node + 2]!;
        const squared = x * x + y * y + z * z;
        if (squared >= least) continue;
        least = squared;
        out = x * data[at + 6]! + y * data[at + 7]! + z * data[at + 8]!;
      }
      if (out > 0) outside = Math.max(outside, out - touching);
      else inside = Math.max(inside, -out - touching);
    }
  }
  return { ...line, bulge: line.bulge + outside, hollow: inside };
}
