import type { Net } from '../net/net.ts';

/**
 * The shape a base is pushed to: a shallow dome, 1 in the middle and 0 at the corners, along which the
 * edges arch half as high as the middle. x and y in mm from the middle of a base of that size.
 */
export function dome(length: number, width: number, x: number, y: number): number {
  return 1 - 2 * (x / length) ** 2 - 2 * (y / width) ** 2;
}

/** Share of its shorter side by which a base that is not pushed in starts out hanging. */
const hangShare = 0.04;

/**
 * How high the middle of a base stands in the start shape, mm. A base can rest with its middle up or down,
 * and the start decides: pushed in it starts up; left alone it starts down, the way the stakes' own
 * spring at the upsett bends it.
 */
export function startRise(
  centreLift: number,
  { length, width }: { readonly length: number; readonly width: number },
): number {
  return centreLift > 0 ? centreLift : -hangShare * Math.min(length, width);
}

/** At most five of `count` indices, evenly spread, both ends and every mirror image included. */
export function spread(count: number): number[] {
  const fifths = [0, 1, 2, 3, 4].map((part) => Math.round((part * (count - 1)) / 4));
  const both = fifths.flatMap((index) => [index, count - 1 - index]);
  return [...new Set(both)].sort((p, q) => p - q);
}

/**
 * The centre lift held as a height, as the soaked stakes keep it once the maker has pushed the middle in:
 * the mean height of `inner` nodes, weighted by their rise on the dome, over that of the four `corners`.
 *
 * @param inner nodes with their rise on the dome, −1 … 1
 */
export function heldLift(
  centreLift: number,
  inner: readonly { readonly node: number; readonly rise: number }[],
  corners: readonly number[],
  cornerRise: number,
): Net['lift'] {
  const raw = inner.map(({ rise }) => Math.max(0, rise) ** 2);
  const total = raw.reduce((sum, weight) => sum + weight, 0);
  if (centreLift <= 0 || total <= 0) return null;
  const height = inner.reduce((sum, { rise }, i) => sum + ((raw[i] ?? 0) / total) * rise, 0);
  return {
    nodes: Int32Array.from([...inner.map(({ node }) => node), ...corners]),
    weights: Float64Array.from([
      ...raw.map((weight) => weight / total),
      ...corners.map(() => -1 / corners.length),
    ]),
    height: centreLift * (height - cornerRise),
  };
}
