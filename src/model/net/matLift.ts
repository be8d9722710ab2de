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

/** At most five crossings each way, evenly spread and ends included: enough to speak for the base. */
export function baseSample(layout: MatLayout): readonly (readonly [number, number])[] {
  const { lengthwise: a, crosswise: b } = layout.plan.base;
  const spread = (count: number) => [
    ...new Set([0, 1, 2, 3, 4].map((part) => Math.round((part * (count - 1)) / 4))),
  ];
  return mirrored(spread(a), a).flatMap((i) => mirrored(spread(b), b).map((j) => [i, j] as const));
}

/** The indices and their mirror images: rounding must not make the sample lopsided. */
function mirrored(indices: readonly number[], count: number): number[] {
  return [...new Set(indices.flatMap((index) => [index, count - 1 - index]))].sort((p, q) => p - q);
}

/**
 * The centre lift held as a height, as the soaked stakes keep it once the maker has pushed the middle
 * in: the mean height of inner crossings, weighted by the dome, over that of the four corners.
 */
export function matLift(layout: MatLayout): Net['lift'] {
  const { plan, crossing } = layout;
  const { lengthwise: a, crosswise: b, centreLift, stake } = plan.base;
  if (centreLift <= 0) return null;
  const { length, width } = baseSize(plan.base);
  const gaps = baseGaps(plan.base);
  const rise = (i: number, j: number) => {
    const x = (j - (b - 1) / 2) * (stake.width + gaps.crosswise);
    const y = (i - (a - 1) / 2) * (stake.width + gaps.lengthwise);
    return dome(length, width, x, y);
  };
  const inner = baseSample(layout).filter(
    ([i, j]) => !((i === 0 || i === a - 1) && (j === 0 || j === b - 1)),
  );
  const raw = inner.map(([i, j]) => Math.max(0, rise(i, j)) ** 2);
  const total = raw.reduce((sum, weight) => sum + weight, 0);
  if (total <= 0) return null;
  const height = inner.reduce((sum, [i, j], n) => sum + (raw[n]! / total) * rise(i, j), 0);
  const corners = [crossing(0, 0), crossing(0, b - 1), crossing(a - 1, 0), crossing(a - 1, b - 1)];
  return {
    nodes: Int32Array.from([...inner.map(([i, j]) => crossing(i, j)), ...corners]),
    weights: Float64Array.from([
      ...raw.map((weight) => weight / total),
      -0.25,
      -0.25,
      -0.25,
      -0.25,
    ]),
    height: centreLift * (height - rise(0, 0)),
  };
}
