/**
 * How deep one piece of strand lies in another.
 * Hot loops over typed arrays: `!` says that an index is inside.
 */
import type { Pieces } from './pieces.ts';
import { boxSize, outlineSize } from './pieces.ts';

/** Where one piece lies deepest in another; one record that is used again and again. */
export interface Touch {
  depth: number;
  /** Shares of the way along either piece. */
  at: number;
  on: number;
  /** Unit vector out of the other piece. */
  x: number;
  y: number;
  z: number;
}

/** Whether the boxes of two pieces, by their places in `boxes`, keep more than `room` mm between them. */
export function isClear(boxes: Float64Array, a: number, b: number, room: number): boolean {
  const gx = boxes[b + 18]! - boxes[a + 18]!;
  const gy = boxes[b + 19]! - boxes[a + 19]!;
  const gz = boxes[b + 20]! - boxes[a + 20]!;
  for (let turn = 0; turn < 2; turn += 1) {
    const own = turn === 0 ? a : b;
    const other = turn === 0 ? b : a;
    for (let axis = 2; axis >= 0; axis -= 1) {
      const x = boxes[own + 3 * axis]!;
      const y = boxes[own + 3 * axis + 1]!;
      const z = boxes[own + 3 * axis + 2]!;
      const apart =
        Math.abs(gx * x + gy * y + gz * z) -
        boxes[own + 15 + axis]! -
        boxes[other + 15]! *
          Math.abs(x * boxes[other]! + y * boxes[other + 1]! + z * boxes[other + 2]!) -
        boxes[other + 16]! *
          Math.abs(x * boxes[other + 3]! + y * boxes[other + 4]! + z * boxes[other + 5]!) -
        boxes[other + 17]! *
          Math.abs(x * boxes[other + 6]! + y * boxes[other + 7]! + z * boxes[other + 8]!);
      if (apart > room) return true;
    }
  }
  return false;
}

/** A coordinate between a point of a list and the next. */
function mixed(list: Float32Array, at: number, share: number): number {
  return list[at]! + share * (list[at + 3]! - list[at]!);
}

/**
 * Looks for where the long edges of piece `own` lie deepest in piece `other`, as far as they lie within
 * `margin` mm of it.
 *
 * @param isClose whether to look closely: at more places of each edge, and at faces too
 * @returns whether there is such a place; then `touch` tells of it
 */
export function deepest(
  { mesh, from, to, vertex, strand, sides, boxes, outlines }: Pieces,
  own: number,
  other: number,
  margin: number,
  isClose: boolean,
  touch: Touch,
): boolean {
  const { positions } = mesh;
  const a = boxSize * own;
  const b = boxSize * other;
  const first = 3 * vertex[from[own]!]!;
  const second = 3 * vertex[to[own]!]!;
  const edges = 3 * sides[strand[from[own]!]!]!;
  const all = sides[strand[from[other]!]!]!;
  const outline = outlineSize * other;
  const dx = boxes[b]!;
  const dy = boxes[b + 1]!;
  const dz = boxes[b + 2]!;
  const ux = boxes[b + 3]!;
  const uy = boxes[b + 4]!;
  const uz = boxes[b + 5]!;
  const vx = boxes[b + 6]!;
  const vy = boxes[b + 7]!;
  const vz = boxes[b + 8]!;
  const sx = boxes[b + 9]!;
  const sy = boxes[b + 10]!;
  const sz = boxes[b + 11]!;
  const long = boxes[b + 21]!;
  const cd = boxes[b + 12]!;
  const cu = boxes[b + 13]!;
  const cv = boxes[b + 14]!;
  const hd = boxes[b + 15]!;
  const hu = boxes[b + 16]! + margin;
  const hv = boxes[b + 17]! + margin;
  // middle line of the one in the other's axes
  const mx = boxes[a + 9]! - sx;
  const my = boxes[a + 10]! - sy;
  const mz = boxes[a + 11]! - sz;
  const mu = mx * ux + my * uy + mz * uz;
  const mv = mx * vx + my * vy + mz * vz;
  const way = boxes[a + 21]!;
  const wu = way * (boxes[a]! * ux + boxes[a + 1]! * uy + boxes[a + 2]! * uz);
  const wv = way * (boxes[a]! * vx + boxes[a + 1]! * vy + boxes[a + 2]! * vz);
  touch.depth = -margin;
  let isFound = false;
  let fu = 0;
  let fv = 0;
  // its edges, and after them lines down its faces: a flat section has them between points 2 and 3, 6 and 7,
  // and two on each; others one, between points 5 and 6
  const isFlat = edges === 24;
  const samples = isClose ? 5 : 3;
  let lines = isFlat ? 4 : 1;
  if (!isClose) lines = 0;
  for (let k = 0; k < edges + 3 * lines; k += 3) {
    let x = 0;
    let y = 0;
    let z = 0;
    let ex = 0;
    let ey = 0;
    let ez = 0;
    if (k < edges) {
      x = positions[first + k]!;
      y = positions[first + k + 1]!;
      z = positions[first + k + 2]!;
      ex = positions[second + k]!;
      ey = positions[second + k + 1]!;
      ez = positions[second + k + 2]!;
    } else {
      const line = (k - edges) / 3;
      const one = isFlat ? 6 + 12 * Math.floor(line / 2) : 15;
      const share = isFlat ? (1 + (line % 2)) / 3 : 0.5;
      x = mixed(positions, first + one, share);
      y = mixed(positions, first + one + 1, share);
      z = mixed(positions, first + one + 2, share);
      ex = mixed(positions, second + one, share);
      ey = mixed(positions, second + one + 1, share);
      ez = mixed(positions, second + one + 2, share);
    }
    x -= sx;
    y -= sy;
    z -= sz;
    ex -= sx;
    ey -= sy;
    ez -= sz;
    // the part of the edge inside the box
    let low = 0;
    let high = 1;
    const v0 = x * vx + y * vy + z * vz;
    const v1 = ex * vx + ey * vy + ez * vz - v0;
    let p = (cv - hv - v0) / v1;
    let q = (cv + hv - v0) / v1;
    if (v1 < 0) {
      if (q > low) low = q;
      if (p < high) high = p;
    } else {
      if (p > low) low = p;
      if (q < high) high = q;
    }
    if (!(low <= high)) continue;
    const u0 = x * ux + y * uy + z * uz;
    const u1 = ex * ux + ey * uy + ez * uz - u0;
    p = (cu - hu - u0) / u1;
    q = (cu + hu - u0) / u1;
    if (u1 < 0) {
      if (q > low) low = q;
      if (p < high) high = p;
    } else {
      if (p > low) low = p;
      if (q < high) high = q;
    }
    if (!(low <= high)) continue;
    const d0 = x * dx + y * dy + z * dz;
    const d1 = ex * dx + ey * dy + ez * dz - d0;
    p = (cd - hd - d0) / d1;
    q = (cd + hd - d0) / d1;
    if (d1 < 0) {
      if (q > low) low = q;
      if (p < high) high = p;
    } else {
      if (p > low) low = p;
      if (q < high) high = q;
    }
    if (!(low <= high)) continue;
    const steps = high - low < 1e-3 ? 1 : samples;
    for (let step = 0; step < steps; step += 1) {
      const at = steps === 1 ? low : low + (step / (steps - 1)) * (high - low);
      const on = (d0 + at * d1) / long;
      if (!(on >= 0 && on <= 1)) continue;
      const u = u0 + at * u1;
      const v = v0 + at * v1;
      const gu = mu + at * wu;
      const gv = mv + at * wv;
      const agree = 0.02 * Math.sqrt(gu * gu + gv * gv);
      let depth = Number.POSITIVE_INFINITY;
      let nu = 0;
      let nv = 0;
      let f = outline + 2 * all - 2;
      let g = f + 2 * all;
      let qu = outlines[f]! + on * (outlines[g]! - outlines[f]!);
      let qv = outlines[f + 1]! + on * (outlines[g + 1]! - outlines[f + 1]!);
      for (let side = 0; side < all; side += 1) {
        f = outline + 2 * side;
        g = f + 2 * all;
        const ru = outlines[f]! + on * (outlines[g]! - outlines[f]!);
        const rv = outlines[f + 1]! + on * (outlines[g + 1]! - outlines[f + 1]!);
        const inverse = outlines[outline + 32 + side]!;
        const eu = (ru - qu) * inverse;
        const ev = (rv - qv) * inverse;
        const under = eu * (v - qv) - ev * (u - qu);
        if (under < -margin) {
          depth = -1;
          break;
        }
        // out on the side on which the one's middle is, so that it is not pushed through
        if (under < depth && ev * gu - eu * gv >= agree && inverse > 0) {
          depth = under;
          nu = ev;
          nv = -eu;
        }
        qu = ru;
        qv = rv;
      }
      if (!(depth > touch.depth && depth < 1e6)) continue;
      isFound = true;
      touch.depth = depth;
      touch.at = at;
      touch.on = on;
      fu = nu;
      fv = nv;
    }
  }
  touch.x = fu * ux + fv * vx;
  touch.y = fu * uy + fv * vy;
  touch.z = fu * uz + fv * vz;
  return isFound;
}
