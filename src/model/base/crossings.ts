import { baseGaps, matSize } from '../../plan/baseSize.ts';
import type { MatBase, OddEnd, OvalBase } from '../../plan/schema.ts';
import type { Side } from '../net/net.ts';
import type { BaseCell, BaseMirror, BaseStrand } from './basePart.ts';
import { dome, heldLift, spread } from './dome.ts';

/** The crossings of a mat: node i·b + j is lengthwise stake i (south to north) over crosswise stake j. */
export interface Crossings {
  readonly a: number;
  readonly b: number;
  readonly node: (i: number, j: number) => number;
  readonly x: (j: number) => number;
  readonly y: (i: number) => number;
  /** Distance from one crosswise (lengthwise) stake to the next, mm. */
  readonly dx: number;
  readonly dy: number;
}

export function crossings(base: MatBase | OvalBase): Crossings {
  const { lengthwise: a, crosswise: b, stake } = base;
  const gaps = baseGaps(base);
  const { length, width } = matSize(base);
  const dx = stake.width + gaps.crosswise;
  const dy = stake.width + gaps.lengthwise;
  return {
    a,
    b,
    node: (i, j) => i * b + j,
    x: (j) => -length / 2 + stake.width / 2 + j * dx,
    y: (i) => -width / 2 + stake.width / 2 + i * dy,
    dx,
    dy,
  };
}

/** The ends of the mat's stakes in order: side, and index of the stake on it. */
export function matEnds({ a, b }: Crossings): { readonly side: Side; readonly stake: number }[] {
  const upTo = (count: number) => Array.from({ length: count }, (_, i) => i);
  return [
    ...upTo(b).map((stake) => ({ side: 'south' as const, stake })),
    ...upTo(a).map((stake) => ({ side: 'east' as const, stake })),
    ...upTo(b).map((k) => ({ side: 'north' as const, stake: b - 1 - k })),
    ...upTo(a).map((k) => ({ side: 'west' as const, stake: a - 1 - k })),
  ];
}

/** Outermost crossing under the end of a stake. */
export function outermost({ a, b, node }: Crossings, side: Side, stake: number): number {
  if (side === 'south') return node(0, stake);
  if (side === 'north') return node(a - 1, stake);
  return side === 'east' ? node(stake, b - 1) : node(stake, 0);
}

/** Unit vector out of the base on each side; along the outline is a quarter turn on. */
export const outward: Readonly<Record<Side, readonly [number, number]>> = {
  south: [0, -1],
  east: [1, 0],
  north: [0, 1],
  west: [-1, 0],
};

/** Cells between crossings, counter-clockwise seen from below. */
export function matCells({ a, b, node, dx, dy }: Crossings): BaseCell[] {
  const cells: BaseCell[] = [];
  for (let i = 0; i + 1 < a; i++) {
    for (let j = 0; j + 1 < b; j++) {
      const nodes = [node(i, j), node(i + 1, j), node(i + 1, j + 1), node(i, j + 1)] as const;
      cells.push({ nodes, wide: dy, high: dx });
    }
  }
  return cells;
}

/** Rings of the crossings, from the middle outward, and how many there are. */
export function matRings({ a, b }: Crossings): { readonly ring: number[]; readonly rings: number } {
  const rings = Math.ceil(Math.min(a, b) / 2);
  const ring = Array.from({ length: a * b }, (_, node) => {
    const [i, j] = [Math.floor(node / b), node % b];
    return rings - 1 - Math.min(i, a - 1 - i, j, b - 1 - j);
  });
  return { ring, rings };
}

/** Crossings that keep the base's place while settling. */
export function matAnchors({ a, b, node }: Crossings): number[] {
  return spread(a).flatMap((i) => spread(b).map((j) => node(i, j)));
}

/** Corner crossings, counter-clockwise from south-west. */
export function matFrame({ a, b, node }: Crossings): readonly [number, number, number, number] {
  return [node(0, 0), node(0, b - 1), node(a - 1, b - 1), node(a - 1, 0)];
}

/** The held centre lift of a mat, or of the mat in an oval base of the given size. */
export function matLift(cross: Crossings, centreLift: number, length: number, width: number) {
  const frame = matFrame(cross);
  const rise = (i: number, j: number) => dome(length, width, cross.x(j), cross.y(i));
  const inner = spread(cross.a)
    .flatMap((i) => spread(cross.b).map((j) => ({ node: cross.node(i, j), rise: rise(i, j) })))
    .filter(({ node }) => !frame.includes(node));
  return heldLift(centreLift, inner, frame, rise(0, 0));
}

/** Mirror images of the crossings, and of the ends of the mat's stakes. */
export function matMirror(cross: Crossings, across: 'x' | 'y'): BaseMirror {
  const { a, b, node } = cross;
  const ends = matEnds(cross);
  const sides: Readonly<Record<Side, Side>> =
    across === 'x'
      ? { south: 'south', east: 'west', north: 'north', west: 'east' }
      : { south: 'north', east: 'east', north: 'south', west: 'west' };
  const place = ends.map(({ side, stake }) => {
    const lies = side === 'south' || side === 'north';
    const image = lies === (across === 'x') ? (lies ? b : a) - 1 - stake : stake;
    return ends.findIndex((other) => other.side === sides[side] && other.stake === image);
  });
  const images = Array.from({ length: a * b }, (_, at) => {
    const [i, j] = [Math.floor(at / b), at % b];
    return across === 'x' ? node(i, b - 1 - j) : node(a - 1 - i, j);
  });
  return { node: images, place };
}

/** Which of the mat's ends is split or has one beside it, for a base of the given size. */
export function matOddEnd(
  { a, b }: Crossings,
  at: OddEnd['at'],
  size: { readonly length: number; readonly width: number },
): number {
  if (at === 'corner') return b - 1;
  const onSouth = (at === 'middle of a long side') === size.length >= size.width;
  return onSouth ? (b - 1) >> 1 : b + ((a - 1) >> 1);
}

/** The mat's stakes as strands: lengthwise ones from west to east, then crosswise ones from south to north. */
export function matStrands(
  { a, b, node }: Crossings,
  one: (part: 'lengthwise' | 'crosswise', index: number, nodes: readonly number[]) => BaseStrand,
): BaseStrand[] {
  const upTo = (count: number) => Array.from({ length: count }, (_, i) => i);
  const along = (i: number) => upTo(b).map((j) => node(i, j));
  const across = (j: number) => upTo(a).map((i) => node(i, j));
  return [
    ...upTo(a).map((i) => one('lengthwise', i, along(i))),
    ...upTo(b).map((j) => one('crosswise', j, across(j))),
  ];
}

/** Curvature of the centre lift's dome along a stake of a base of the given size, 1/mm. */
export function domeCurvature(
  part: 'lengthwise' | 'crosswise',
  centreLift: number,
  { length, width }: { readonly length: number; readonly width: number },
): number {
  return (4 * centreLift) / (part === 'lengthwise' ? length : width) ** 2;
}
