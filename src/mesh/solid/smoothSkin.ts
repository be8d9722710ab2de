/**
 * A smooth skin over flat triangles: every triangle becomes a cubic patch from its corners and their
 * normals alone (curved PN triangles: Vlachos, Peters, Boyd & Mitchell 2001), drawn in `pieces`²
 * smaller ones. Neighbours share their edge's curve, so the skin stays closed.
 * Hot loops over typed arrays: `!` says that an index is inside.
 */
import type { NormalSkin, Skin } from './netSkin.ts';

type Point = readonly [number, number, number];

/** The skin with every edge in `pieces` pieces. */
export function smoothSkin(skin: NormalSkin, pieces: number): Skin {
  const { triangles, half } = skin;
  const points = Array.from(skin.points);
  const halves = Array.from(half);
  const edges = new Map<number, number>();
  const count = half.length;

  /** First of the points on the edge from the lower to the higher numbered corner. */
  const edgePoints = (low: number, high: number) => {
    const key = low * count + high;
    const present = edges.get(key);
    if (present !== undefined) return present;
    const first = halves.length;
    edges.set(key, first);
    const ends = [corner(skin, low), corner(skin, high)] as const;
    const control = [third(skin, low, high), third(skin, high, low)] as const;
    for (let step = 1; step < pieces; step += 1) {
      const t = step / pieces;
      points.push(...onEdge(ends, control, t));
      halves.push((1 - t) * half[low]! + t * half[high]!);
    }
    return first;
  };
  const onSide = (from: number, to: number, step: number) => {
    if (step === 0) return from;
    if (step === pieces) return to;
    const first = edgePoints(Math.min(from, to), Math.max(from, to));
    return first + (from < to ? step : pieces - step) - 1;
  };

  const fine: number[] = [];
  for (let at = 0; at < triangles.length; at += 3) {
    const corners = [triangles[at]!, triangles[at + 1]!, triangles[at + 2]!] as const;
    const inside = patch(skin, corners);
    const [a, b, c] = corners;
    // grid[j][i]: i steps from a towards b, j steps towards c
    const grid = Array.from({ length: pieces + 1 }, (_, j) =>
      Array.from({ length: pieces + 1 - j }, (_, i) => {
        if (j === 0) return onSide(a, b, i);
        if (i === 0) return onSide(a, c, j);
        if (i + j === pieces) return onSide(b, c, j);
        const [v, w] = [i / pieces, j / pieces];
        points.push(...inside(v, w));
        halves.push((1 - v - w) * half[a]! + v * half[b]! + w * half[c]!);
        return halves.length - 1;
      }),
    );
    for (let j = 0; j < pieces; j += 1) {
      for (let i = 0; i < pieces - j; i += 1) {
        fine.push(grid[j]![i]!, grid[j]![i + 1]!, grid[j + 1]![i]!);
        if (i + j + 1 < pieces) {
          fine.push(grid[j]![i + 1]!, grid[j + 1]![i + 1]!, grid[j + 1]![i]!);
        }
      }
    }
  }
  const rim = Array.from(skin.rim).flatMap((from, index) => {
    const to = skin.rim[(index + 1) % skin.rim.length]!;
    return Array.from({ length: pieces }, (_, step) => onSide(from, to, step));
  });
  return {
    points: Float64Array.from(points),
    half: Float64Array.from(halves),
    triangles: Int32Array.from(fine),
    rim: Int32Array.from(rim),
  };
}

function corner({ points }: NormalSkin, at: number): Point {
  return [points[3 * at]!, points[3 * at + 1]!, points[3 * at + 2]!];
}

/** Control point a third of the way from one corner to another, laid into the first one's tangent plane. */
function third(skin: NormalSkin, from: number, to: number): Point {
  const { points } = skin;
  const normals = normalsTowards(skin, from, to);
  const [a, b] = [3 * from, 3 * to];
  let rise = 0;
  for (let d = 0; d < 3; d += 1) rise += (points[b + d]! - points[a + d]!) * normals[a + d]!;
  const axis = (d: number) => (2 * points[a + d]! + points[b + d]! - rise * normals[a + d]!) / 3;
  return [axis(0), axis(1), axis(2)];
}

/** The normals that hold at `from` on the way to `to`: on a fold those of the side that lies there. */
function normalsTowards({ normals, fold }: NormalSkin, from: number, to: number): Float64Array {
  if (!fold || from < fold.first || from >= fold.last) return normals;
  if (to < fold.first) return fold.base;
  return to >= fold.last ? fold.wall : normals;
}

function onEdge(
  [a, b]: readonly [Point, Point],
  [p, q]: readonly [Point, Point],
  t: number,
): Point {
  const s = 1 - t;
  const axis = (d: 0 | 1 | 2) =>
    s * s * s * a[d] + 3 * s * s * t * p[d] + 3 * s * t * t * q[d] + t * t * t * b[d];
  return [axis(0), axis(1), axis(2)];
}

/** The cubic patch over a triangle, by the shares of its second and third corner. */
function patch(skin: NormalSkin, corners: readonly [number, number, number]) {
  const [a, b, c] = corners;
  const ends = corners.map((at) => corner(skin, at)) as unknown as readonly [Point, Point, Point];
  const [ab, ba] = [third(skin, a, b), third(skin, b, a)];
  const [bc, cb] = [third(skin, b, c), third(skin, c, b)];
  const [ca, ac] = [third(skin, c, a), third(skin, a, c)];
  const middle = (d: 0 | 1 | 2) => {
    const ring = (ab[d] + ba[d] + bc[d] + cb[d] + ca[d] + ac[d]) / 6;
    return ring + (ring - (ends[0][d] + ends[1][d] + ends[2][d]) / 3) / 2;
  };
  return (v: number, w: number): Point => {
    const u = 1 - v - w;
    const axis = (d: 0 | 1 | 2) =>
      u ** 3 * ends[0][d] +
      v ** 3 * ends[1][d] +
      w ** 3 * ends[2][d] +
      3 * u * u * (v * ab[d] + w * ac[d]) +
      3 * v * v * (u * ba[d] + w * bc[d]) +
      3 * w * w * (u * ca[d] + v * cb[d]) +
      6 * u * v * w * middle(d);
    return [axis(0), axis(1), axis(2)];
  };
}
