/** How high the basket stands with its rim on. */
import type { Plan } from '../../plan/schema.ts';
import { caneThickness } from '../../plan/strandSizes.ts';
import type { Measured } from '../basket.ts';
import { halfWall } from '../read/wallThickness.ts';
import { fillerThickness } from './rimParts.ts';

/** How far parts of a rim stand over the wall's top, mm: its hoops, and without the lashing the highest of it. */
export function rimOverWall({ base, rim }: Plan): { readonly hoops: number; readonly top: number } {
  const folded = base.stake.thickness;
  // bent in over the last row a stake stands a little higher than it is thick
  return rim.filler
    ? { hoops: folded + 0.75 * fillerThickness, top: 1.15 * folded + fillerThickness }
    : { hoops: 2 * folded, top: 2 * folded };
}

/**
 * Height over the table of the lashed rim, mm, where it stands highest: over the middle of the wall, or
 * where the wall leans, at the edge of the hoop that leaning turns up.
 */
export function heightWithRim({ plan, net, stakes }: Measured): number {
  const { hoops, top } = rimOverWall(plan);
  const { hoop, lasher } = plan.rim;
  const half = halfWall(plan, net.rows.length - 1) + hoop.thickness;
  const folded = plan.base.stake.thickness;
  const cane = caneThickness(lasher.width);
  return stakes.reduce((highest, { path }) => {
    const [below, last] = path.slice(-2);
    if (!below || !last) return highest;
    const [x, y, z] = [last[0] - below[0], last[1] - below[1], last[2] - below[2]];
    const long = Math.hypot(x, y, z) || 1;
    const outward = (x * last[0] + y * last[1]) / (Math.hypot(last[0], last[1]) || 1) / long;
    const upright = z / long;
    // leaning in turns up the outside hoop, leaning out the inside one behind the tucked stakes, and the filler
    const [edge, filler] = outward < 0 ? [half, -folded / 2] : [half + folded, folded / 2];
    const over = [
      [filler, top + cane],
      // where its ends lap a hoop is square
      [edge, hoops + cane],
    ] as const;
    const high = over.map(([aside, up]) => up * upright + aside * Math.abs(outward));
    return Math.max(highest, last[2] + Math.max(...high));
  }, 0);
}
