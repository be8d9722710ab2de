import type { Strand } from '../../src/mesh/strandMesh.ts';
import { sweepStrands } from '../../src/mesh/sweepStrands.ts';
import type { Point } from './expectSound.ts';
import { cross, dot, minus, pointOf, size } from './expectSound.ts';

/** Where one strand lies deepest inside another. */
export interface Overlap {
  /** How far a point of `one` lies under the surface of `other`, mm; 0 where none does. */
  readonly depth: number;
  readonly one: string;
  readonly other: string;
  readonly place: Point;
}

/** A piece of strand between two sections next to each other. */
interface Piece {
  readonly strand: number;
  readonly from: readonly Point[];
  readonly to: readonly Point[];
  readonly start: Point;
  readonly end: Point;
}

const cell = 12;

/**
 * The overlaps of any two strands, each pair where it is deepest, the deepest pair first: every point of
 * every strand's sections is tried against the pieces of all others that are near.
 */
export function overlaps(strands: readonly Strand[]): Overlap[] {
  return found(strands, (ring) => ring);
}

/** The same for the strands' middle lines: two strands of which none is deep in the other pass it by. */
export function piercings(strands: readonly Strand[]): Overlap[] {
  return found(strands, (ring) => [middle(ring)]);
}

function found(
  strands: readonly Strand[],
  tried: (ring: readonly Point[]) => readonly Point[],
): Overlap[] {
  const swept = strands.map(ringsOf);
  const grid = new Map<string, Piece[]>();
  swept.forEach((rings, strand) => {
    rings.slice(1).forEach((to, at) => {
      const from = rings[at] ?? to;
      const piece = { strand, from, to, start: middle(from), end: middle(to) };
      if (size(minus(piece.end, piece.start)) < 1e-6) return;
      for (const key of keysAround([...from, ...to])) {
        const list = grid.get(key);
        if (list) list.push(piece);
        else grid.set(key, [piece]);
      }
    });
  });
  const pairs = new Map<number, Overlap>();
  swept.forEach((rings, strand) => {
    for (const ring of rings) {
      for (const point of tried(ring)) {
        for (const piece of grid.get(keyOf(point)) ?? []) {
          if (piece.strand === strand) continue;
          const depth = depthIn(piece, point);
          const pair = Math.min(strand, piece.strand) * 1e5 + Math.max(strand, piece.strand);
          if (depth <= (pairs.get(pair)?.depth ?? 0)) continue;
          const [one, other] = [strands[strand]?.name ?? '', strands[piece.strand]?.name ?? ''];
          pairs.set(pair, { depth, one, other, place: point });
        }
      }
    }
  });
  return [...pairs.values()].sort((one, other) => other.depth - one.depth);
}

/** The sections of a strand in turn, each with its points. */
function ringsOf(strand: Strand): Point[][] {
  const { positions } = sweepStrands([strand]);
  const sides = strand.section.shade.length;
  const count = positions.length / 3 / sides - (strand.closed ? 0 : 2);
  const rings = Array.from({ length: Math.max(0, count) }, (_, ring) =>
    Array.from({ length: sides }, (_side, side) => pointOf(positions, ring * sides + side)),
  );
  const [first] = rings;
  return strand.closed && first ? [...rings, first] : rings;
}

/** How deep a point lies in a piece, mm; 0 or less outside. */
function depthIn({ from, to, start, end }: Piece, point: Point): number {
  const along = minus(end, start);
  const length = size(along);
  const share = dot(minus(point, start), along) / (length * length);
  if (share < 0 || share > 1) return 0;
  const outline = from.map((a, at) => mixed(a, to[at] ?? a, share));
  const [first, far] = [outline[0], outline[Math.floor(outline.length / 2)]];
  if (!first || !far) return 0;
  const direction = along.map((value) => value / length) as unknown as Point;
  let depth = Number.POSITIVE_INFINITY;
  outline.forEach((a, at) => {
    const b = outline[(at + 1) % outline.length] ?? a;
    const inward = cross(direction, minus(b, a));
    const wide = size(inward);
    if (wide > 1e-9) depth = Math.min(depth, dot(inward, minus(point, a)) / wide);
  });
  return depth;
}

function mixed(a: Point, b: Point, share: number): Point {
  return [a[0] + share * (b[0] - a[0]), a[1] + share * (b[1] - a[1]), a[2] + share * (b[2] - a[2])];
}

function middle(points: readonly Point[]): Point {
  const sum = points.reduce((all, point) => mixed(all, minus(all, minus([0, 0, 0], point)), 1), [
    0, 0, 0,
  ] as Point);
  return [sum[0] / points.length, sum[1] / points.length, sum[2] / points.length];
}

function keyOf(point: Point): string {
  return point.map((value) => Math.floor(value / cell)).join();
}

/** Keys of all cells that the box round some points touches. */
function keysAround(points: readonly Point[]): string[] {
  const range = [0, 1, 2].map((axis) => {
    const values = points.map((point) => Math.floor((point[axis] ?? 0) / cell));
    const low = Math.min(...values);
    return Array.from({ length: Math.max(...values) - low + 1 }, (_, at) => low + at);
  });
  const [xs = [], ys = [], zs = []] = range;
  return xs.flatMap((x) => ys.flatMap((y) => zs.map((z) => `${x},${y},${z}`)));
}
