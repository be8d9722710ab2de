/**
 * Strands cut into pieces, each between two sections that follow each other, with the box round each.
 * Hot loops over typed arrays: `!` says that an index is inside.
 */
import { sectionsAfter } from '../crossings.ts';
import type { Strand, StrandMesh } from '../strandMesh.ts';

/** Numbers that a box and an outline hold. */
export const boxSize = 22;
export const outlineSize = 40;

/** Where in a box each number stands. */
export const box = {
  /** Unit vectors along the piece, across it and out of its face: nine numbers. */
  axes: 0,
  /** Middle of the section that the piece begins with. */
  start: 9,
  /** From there to the middle of the box, along the axes. */
  centre: 12,
  /** Half its size along each of them. */
  half: 15,
  /** Its middle. */
  middle: 18,
  /** How far on the other section is. */
  length: 21,
} as const;

export interface Pieces {
  /** How they are drawn; another drawing of the same strands may take its place. */
  mesh: StrandMesh;
  readonly count: number;
  /** The sections before and after each piece. */
  readonly from: Int32Array;
  readonly to: Int32Array;
  /** Of each section its first vertex, its strand, and how far along that it is, in places. */
  readonly vertex: Int32Array;
  readonly strand: Int32Array;
  readonly along: Float64Array;
  /** Vertices of each strand's section, the number of its first place, and of its places. */
  readonly sides: Int32Array;
  readonly first: Int32Array;
  readonly places: Int32Array;
  readonly boxes: Float64Array;
  /** Of each piece u, v of the points of both sections, in its axes; from 32 on one over the length of each side. */
  readonly outlines: Float64Array;
}

/** The pieces of `strands` as `mesh` draws them; sections have eight points at most. */
export function piecesOf(strands: readonly Strand[], mesh: StrandMesh): Pieces {
  const most = mesh.strand.length / 3;
  const list = (size: number) => new Int32Array(size);
  let count = 0;
  const from = list(most);
  const to = list(most);
  const vertex = list(most);
  const strand = list(most);
  const along = new Float64Array(most);
  const sides = list(strands.length);
  const first = list(strands.length);
  const places = list(strands.length);
  let [section, next, place] = [0, 0, 0];
  strands.forEach(({ path, section: { shade }, between, closed, sparse = false }, index) => {
    const { count: own, bears } = path;
    sides[index] = shade.length;
    first[index] = place;
    places[index] = own;
    place += own;
    if (own < 2) return;
    const begin = section;
    const add = (at: number, corner: number) => {
      vertex[section] = corner;
      strand[section] = index;
      along[section] = at;
      if (section > begin) {
        from[count] = section - 1;
        to[count] = section;
        count += 1;
      }
      section += 1;
    };
    for (let here = 0; here < own; here += 1) {
      const gap = here + 1 < own || closed ? sectionsAfter(path, here, between, sparse) : 0;
      for (let step = bears[here] === 1 ? -1 : 0; step <= gap; step += 1) {
        add(here + Math.max(0, step) / (gap + 1), next);
        next += shade.length;
      }
    }
    if (closed) add(own, vertex[begin]!);
    else next += 2 * shade.length;
  });
  // one record, made at once: engines run loops over records of one make quicker
  const pieces: Pieces = {
    mesh,
    count,
    from,
    to,
    vertex,
    strand,
    along,
    sides,
    first,
    places,
    boxes: new Float64Array(boxSize * count),
    outlines: new Float64Array(outlineSize * count),
  };
  for (let piece = 0; piece < count; piece += 1) measure(pieces, piece);
  return pieces;
}

/** Puts the box round a piece. */
export function measure(
  { mesh: { positions, normals }, from, to, vertex, strand, sides, boxes, outlines }: Pieces,
  piece: number,
): void {
  const all = 3 * sides[strand[from[piece]!]!]!;
  const a = 3 * vertex[from[piece]!]!;
  const b = 3 * vertex[to[piece]!]!;
  let sx = 0;
  let sy = 0;
  let sz = 0;
  let dx = 0;
  let dy = 0;
  let dz = 0;
  for (let at = 0; at < all; at += 3) {
    sx += positions[a + at]!;
    sy += positions[a + at + 1]!;
    sz += positions[a + at + 2]!;
    dx += positions[b + at]!;
    dy += positions[b + at + 1]!;
    dz += positions[b + at + 2]!;
  }
  dx -= sx;
  dy -= sy;
  dz -= sz;
  const long = Math.sqrt(dx * dx + dy * dy + dz * dz) || 1;
  dx /= long;
  dy /= long;
  dz /= long;
  sx /= all / 3;
  sy /= all / 3;
  sz /= all / 3;
  // the third point of every section is on the face that looks out
  let vx = normals[a + 6]! + normals[b + 6]!;
  let vy = normals[a + 7]! + normals[b + 7]!;
  let vz = normals[a + 8]! + normals[b + 8]!;
  const on = vx * dx + vy * dy + vz * dz;
  vx -= on * dx;
  vy -= on * dy;
  vz -= on * dz;
  const out = Math.sqrt(vx * vx + vy * vy + vz * vz) || 1;
  vx /= out;
  vy /= out;
  vz /= out;
  const ux = vy * dz - vz * dy;
  const uy = vz * dx - vx * dz;
  const uz = vx * dy - vy * dx;
  let d0 = 0;
  let d1 = 0;
  let u0 = 0;
  let u1 = 0;
  let v0 = 0;
  let v1 = 0;
  const outline = outlineSize * piece;
  let point = outline;
  for (let end = a; ; end = b) {
    let before = point + (2 * all) / 3 - 2;
    for (let at = end; at < end + all; at += 3) {
      const x = positions[at]! - sx;
      const y = positions[at + 1]! - sy;
      const z = positions[at + 2]! - sz;
      const d = x * dx + y * dy + z * dz;
      const u = x * ux + y * uy + z * uz;
      const v = x * vx + y * vy + z * vz;
      outlines[point] = u;
      outlines[point + 1] = v;
      point += 2;
      if (d < d0) d0 = d;
      if (d > d1) d1 = d;
      if (u < u0) u0 = u;
      if (u > u1) u1 = u;
      if (v < v0) v0 = v;
      if (v > v1) v1 = v;
    }
    if (end === a) {
      for (let at = outline; at < point; at += 2) {
        const u = outlines[at]! - outlines[before]!;
        const v = outlines[at + 1]! - outlines[before + 1]!;
        const size = Math.sqrt(u * u + v * v);
        outlines[outline + 32 + (at - outline) / 2] = size > 1e-6 ? 1 / size : 0;
        before = at;
      }
    }
    if (end === b) break;
  }
  const d = (d0 + d1) / 2;
  const u = (u0 + u1) / 2;
  const v = (v0 + v1) / 2;
  let o = boxSize * piece;
  boxes[o] = dx;
  boxes[o + 1] = dy;
  boxes[o + 2] = dz;
  boxes[o + 3] = ux;
  boxes[o + 4] = uy;
  boxes[o + 5] = uz;
  boxes[o + 6] = vx;
  boxes[o + 7] = vy;
  boxes[o + 8] = vz;
  o += 9;
  boxes[o] = sx;
  boxes[o + 1] = sy;
  boxes[o + 2] = sz;
  boxes[o + 3] = d;
  boxes[o + 4] = u;
  boxes[o + 5] = v;
  boxes[o + 6] = d1 - d;
  boxes[o + 7] = u1 - u;
  boxes[o + 8] = v1 - v;
  boxes[o + 9] = sx + d * dx + u * ux + v * vx;
  boxes[o + 10] = sy + d * dy + u * uy + v * vy;
  boxes[o + 11] = sz + d * dz + u * uz + v * vz;
  boxes[o + 12] = (3 * long) / all;
}
