import { baseGaps, baseSize } from '../../plan/baseSize.ts';
import type { MatLayout } from './mat.ts';
import type { Net } from './net.ts';

/**
 * The shape a mat is pushed to: a shallow dome, 1 in the middle and 0 at the corners, along which the
 * edges arch half as high as the middle. x and y in mm from the middle of the base.
 */
export function dome(length: number, width: number, x: number, y: number): number {
  return 1 - 2 * (x / length) ** 2 - 2 * (y / width) ** 2;
}

/**
 * The centre lift held as a height, as the soaked stakes keep it once the maker has pushed the middle
 * in: the mean height of the inner crossings, weighted by the dome, over that of the four corners.
 */
export function matLift({ plan, crossing }: MatLayout): Net['lift'] {
  const { lengthwise: a, crosswise: b, centreLift, stake } = plan.base;
  if (centreLift <= 0) return null;
  const { length, width } = baseSize(plan.base);
  const gaps = baseGaps(plan.base);
  const nodes: number[] = [];
  const weights: number[] = [];
  let total = 0;
  let height = 0;
  const rise = (i: number, j: number) => {
    const x = (j - (b - 1) / 2) * (stake.width + gaps.crosswise);
    const y = (i - (a - 1) / 2) * (stake.width + gaps.lengthwise);
    return dome(length, width, x, y);
  };
  for (let i = 0; i < a; i++) {
    for (let j = 0; j < b; j++) {
      const corner = (i === 0 || i === a - 1) && (j === 0 || j === b - 1);
      if (corner) continue;
      const weight = Math.max(0, rise(i, j)) ** 2;
      nodes.push(crossing(i, j));
      weights.push(weight);
      total += weight;
      height += weight * rise(i, j);
    }
  }
  if (total <= 0) return null;
  const corners = [crossing(0, 0), crossing(0, b - 1), crossing(a - 1, 0), crossing(a - 1, b - 1)];
  return {
    nodes: Int32Array.from([...nodes, ...corners]),
    weights: Float64Array.from([...weights.map((w) => w / total), -0.25, -0.25, -0.25, -0.25]),
    height: centreLift * (height / total - rise(0, 0)),
  };
}
