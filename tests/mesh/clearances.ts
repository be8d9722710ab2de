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
  /** Number of the section it begins with; and how many sections of its strand lead back to the first, if it is closed. */
  readonly at: number;
  readonly all: number;
  readonly from: readonly Point[];
  readonly to: readonly Point[];
  readonly start: Point;
  readonly end: Point;
  /** No point of it is farther than this from its middle, mm. */
  readonly reach: number;
}

const cell = 6;

/** Sections of one strand that are nearer to each other than this are neighbours. */
const neighbours = 24;
/** Surfaces are tried in places no farther from each other along the strand, mm. */
const step = 2;

/**
 * The overlaps of any two strands, and of a strand with what of it is not near along it (a spiral's next row, the
 * lap of a hoop), each pair where it is deepest, the deepest pair first. Tried are the corners of all sections, the
 * middles of the sides between them, and the same every two millimetres on the way to the next section.
 */
export function overlaps(strands: readonly Strand[]): Overlap[] {
  return found(strands, (ring, next) => {
    const far = size(minus(middle(next), middle(ring)));
    const steps = Math.max(1, Math.ceil(far / step));
    return Array.from({ length: steps }, (_, at) =>
      ring.map((point, side) => mixed(point, next[side] ?? point, at / steps)),
    ).flatMap((outline) =>
      outline.flatMap((point, side) => [
        point,
        mixed(point, outline[(side + 1) % outline.length] ?? point, 0.5),
      ]),
    );
  });
}

/** The same for the strands' middle lines: two strands of which none is deep in the other pass it by. */
export function piercings(strands: readonly Strand[]): Overlap[] {
  return found(strands, (ring) => [middle(ring)]);
}

function found(
  strands: readonly Strand[],
  tried: (ring: readonly Point[], next: readonly Point[]) => readonly Point[],
): Overlap[] {
  const swept = strands.map(ringsOf);
  const grid = new Map<number, Piece[]>();
  swept.forEach((rings, strand) => {
    rings.slice(1).forEach((to, at) => {
      const from = rings[at] ?? to;
      const ends = { start: middle(from), end: middle(to) };
      const centre = mixed(ends.start, ends.end, 0.5);
      const reach = Math.max(...[...from, ...to].map((point) => size(minus(point, centre))));
      const all = strands[strand]?.closed ? rings.length : Number.POSITIVE_INFINITY;
      const piece = { strand, at, all, from, to, ...ends, reach };
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
    rings.forEach((ring, at) => {
      for (const point of tried(ring, rings[at + 1] ?? ring)) {
        for (const piece of grid.get(keyOf(point)) ?? []) {
          const apart = Math.abs(piece.at - at);
          const isNear = apart < neighbours || piece.all - apart < neighbours;
          if (piece.strand === strand && isNear) continue;
          const depth = depthIn(piece, point);
          const pair = Math.min(strand, piece.strand) * 1e5 + Math.max(strand, piece.strand);
          if (depth <= (pairs.get(pair)?.depth ?? 0)) continue;
          const [one, other] = [strands[strand]?.name ?? '', strands[piece.strand]?.name ?? ''];
          pairs.set(pair, { depth, one, other, place: point });
        }
      }
    });
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
function depthIn({ from, to, start, end, reach }: Piece, point: Point): number {
  const off = minus(point, start);
  const along = minus(end, start);
  const length = size(along);
  const share = dot(off, along) / (length * length);
  if (share < 0 || share > 1 || size(off) > reach + length) return 0;
  const direction = along.map((value) => value / length) as unknown as Point;
  let depth = Number.POSITIVE_INFINITY;
  let a = mixed(from.at(-1) ?? start, to.at(-1) ?? end, share);
  for (let side = 0; side < from.length && depth > 0; side += 1) {
    const b = mixed(from[side] ?? a, to[side] ?? a, share);
    const inward = cross(direction, minus(b, a));
    const wide = size(inward);
    if (wide > 1e-9) depth = Math.min(depth, dot(inward, minus(point, a)) / wide);
    a = b;
  }
  return Number.isFinite(depth) ? depth : 0;
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

function keyOf([x, y, z]: Point): number {
  return keyAt(Math.floor(x / cell), Math.floor(y / cell), Math.floor(z / cell));
}

/** A number for each cell within some metres. */
function keyAt(x: number, y: number, z: number): number {
  return ((x + 512) * 1024 + y + 512) * 1024 + z + 512;
}

/** Keys of all cells that the box round some points touches. */
function keysAround(points: readonly Point[]): number[] {
  const range = [0, 1, 2].map((axis) => {
    const values = points.map((point) => Math.floor((point[axis] ?? 0) / cell));
    const low = Math.min(...values);
    return Array.from({ length: Math.max(...values) - low + 1 }, (_, at) => low + at);
  });
  const [xs = [], ys = [], zs = []] = range;
  return xs.flatMap((x) => ys.flatMap((y) => zs.map((z) => keyAt(x, y, z))));
}
