/**
 * The drawn basket on its table. The net stands on it without regard to the width of its strands: where a
 * stake dips to the table at a slant its edge would be under it.
 * Hot loops over typed arrays: `!` says that an index is inside.
 */
import type { Basket } from '../model/basket.ts';
import { field, stride } from './crossings.ts';
import type { Strand } from './strandMesh.ts';

/**
 * Normals of the nodes with those of the base, where it comes down to the table, turned to the vertical as
 * far as strands that cross there need to stay above it.
 */
export function levelledNormals({ net, plan, positions }: Basket, normals: Float64Array) {
  const levelled = Float64Array.from(normals);
  const { width, thickness } = plan.base.stake;
  for (let node = 0; node < net.baseNodeCount; node += 1) {
    const at = 3 * node;
    const [x, y] = [normals[at]!, normals[at + 1]!];
    const tilt = Math.sqrt(x * x + y * y);
    // two stakes cross, the lower one a thickness under the node; both lie flat for half a width
    const room = Math.max(0, positions[at + 2]! - thickness) / (0.75 * width);
    if (tilt <= room) continue;
    const share = tilt > 0 ? room / tilt : 0;
    levelled[at] = share * x;
    levelled[at + 1] = share * y;
    levelled[at + 2] = -Math.sqrt(Math.max(0, 1 - room * room));
  }
  return levelled;
}

/** Raises all `strands`, paths in place, by what the lowest place of any of them is under the table. */
export function raiseToTable(strands: readonly Strand[]): void {
  let lowest = 0;
  for (const { path, thickness } of strands) {
    for (let place = 0; place < path.count; place += 1) {
      lowest = Math.min(lowest, underFace(path.data, place * stride, thickness));
    }
  }
  for (const { path } of strands) {
    for (let place = 0; place < path.count; place += 1) path.data[place * stride + 2]! -= lowest;
  }
}

/** z of the lowest point of a strand where it lies flat, mm; `at` is its place in `data`. */
function underFace(data: Float64Array, at: number, thickness: number): number {
  const tangent = at + field.tangent;
  const normal = at + field.normal;
  // along the strand, across it (normal × tangent), and through it
  const across = data[normal]! * data[tangent + 1]! - data[normal + 1]! * data[tangent]!;
  return (
    data[at + 2]! -
    data[at + field.bearing]! * Math.abs(data[tangent + 2]!) -
    (data[at + field.width]! / 2) * Math.abs(across) -
    (thickness / 2) * Math.abs(data[normal + 2]!)
  );
}
