import { baseSize, matSize } from '../../plan/baseSize.ts';
import type { OvalBase } from '../../plan/schema.ts';
import type { Side } from '../net/net.ts';
import type { BaseCell, BaseMirror, BasePart, BaseStrand, Place } from './basePart.ts';
import type { Crossings } from './crossings.ts';
import {
  crossings,
  domeCurvature,
  matAnchors,
  matCells,
  matEnds,
  matFrame,
  matLift,
  matMirror,
  matOddEnd,
  matRings,
  matStrands,
  outermost,
  outward,
} from './crossings.ts';
import { dome } from './dome.ts';

/** One end of the oval: where it leaves the mat, and the direction it takes through the border. */
interface Ray {
  readonly side: Side;
  /** Stake of the mat, or −1 for an end that fans out from a corner. */
  readonly stake: number;
  /** Outermost crossing it hangs on. */
  readonly from: number;
  /** Point of the mat's outline it starts at, and unit vector outward, mm. */
  readonly x: number;
  readonly y: number;
  readonly outX: number;
  readonly outY: number;
}

/**
 * The oval base: a mat, and round it a border woven flat whose outline is the mat's with corners rounded
 * by the border's width. The mat's stakes run straight out; ends laid in at a corner fan over its rounding.
 */
export function ovalBase(base: OvalBase): BasePart {
  const cross = crossings(base);
  const mat = cross.a * cross.b;
  const size = baseSize(base);
  const rays = ovalRays(base, cross);
  const rings = Math.max(1, Math.min(4, Math.round(base.border / (base.stake.width + base.gap))));
  // Inner rings of the border, then (as places) the edge.
  const node = (t: number, e: number) => mat + (t - 1) * rays.length + e;
  const inner = mat + (rings - 1) * rays.length;
  const point = ({ x, y, outX, outY }: Ray, t: number) => {
    const off = (base.border * t) / rings;
    return [x + outX * off, y + outY * off] as const;
  };
  const rise = (x: number, y: number) => base.centreLift * dome(size.length, size.width, x, y);
  const start = new Float64Array(3 * (inner + rays.length));
  for (let at = 0; at < mat; at++) {
    const [x, y] = [cross.x(at % cross.b), cross.y(Math.floor(at / cross.b))];
    start.set([x, y, rise(x, y)], 3 * at);
  }
  for (let t = 1; t <= rings; t++) {
    rays.forEach((ray, e) => {
      const [x, y] = point(ray, t);
      start.set([x, y, rise(x, y)], 3 * node(t, e));
    });
  }
  const matRing = matRings(cross);
  const ring = [...matRing.ring];
  for (let t = 1; t < rings; t++) ring.push(...rays.map(() => matRing.rings + t - 1));
  const loops = Array.from({ length: rings }, (_, t) => rays.map((_ray, e) => node(t + 1, e)));
  return {
    inner,
    start,
    ring,
    rings: matRing.rings + rings - 1,
    places: places(base, cross, rays),
    strands: strands(base, cross, rays, rings, node),
    ...borderCells(cross, rays, loops, base),
    loops: [],
    ties: loops.flatMap((nodes) => ties(nodes, start)),
    mirror: {
      x: ovalMirror(cross, rays, rings, node, inner, 'x'),
      y: ovalMirror(cross, rays, rings, node, inner, 'y'),
    },
    frame: matFrame(cross),
    anchors: matAnchors(cross),
    lift: matLift(cross, base.centreLift, size.length, size.width),
    rigid: false,
    oddPlace: (at) => {
      const own = matEnds(cross)[matOddEnd(cross, at, size)]!;
      return rays.findIndex((ray) => ray.side === own.side && ray.stake === own.stake);
    },
  };
}

/** The ends in order: each side's stakes, and after each side the ends that fan out at its corner. */
function ovalRays(base: OvalBase, cross: Crossings): Ray[] {
  const { length, width } = matSize(base);
  const rays: Ray[] = [];
  const ends = matEnds(cross);
  ends.forEach(({ side, stake }, p) => {
    const [outX, outY] = outward[side];
    const along = side === 'south' || side === 'north';
    rays.push({
      side,
      stake,
      from: outermost(cross, side, stake),
      x: along ? cross.x(stake) : (outX * length) / 2,
      y: along ? (outY * width) / 2 : cross.y(stake),
      outX,
      outY,
    });
    const next = ends[(p + 1) % ends.length]!;
    if (next.side === side) return;
    const [turnX, turnY] = outward[next.side];
    for (let f = 1; f <= base.fanned; f++) {
      const angle = (f / (base.fanned + 1)) * (Math.PI / 2);
      const [c, s] = [Math.cos(angle), Math.sin(angle)];
      rays.push({
        side: f <= base.fanned / 2 ? side : next.side,
        stake: -1,
        from: outermost(cross, side, stake),
        x: ((outX + turnX) * length) / 2,
        y: ((outY + turnY) * width) / 2,
        outX: c * outX + s * turnX,
        outY: c * outY + s * turnY,
      });
    }
  });
  return rays;
}

function places(base: OvalBase, { a, b }: Crossings, rays: readonly Ray[]): Place[] {
  let fanned = 0;
  return rays.map(({ side, stake, x, y, outX, outY }) => {
    const along = side === 'south' || side === 'north';
    const ofMat = along ? a + stake : stake;
    return {
      side,
      strand: stake < 0 ? a + b + fanned++ : ofMat,
      far: stake < 0 || side === 'north' || side === 'east' ? 1 : 0,
      x: x + outX * base.border,
      y: y + outY * base.border,
      alongX: -outY,
      alongY: outX,
    };
  });
}

function strands(
  base: OvalBase,
  cross: Crossings,
  rays: readonly Ray[],
  rings: number,
  node: (t: number, e: number) => number,
): BaseStrand[] {
  const size = baseSize(base);
  const step = base.border / rings;
  const border = Array<number>(rings - 1).fill(step);
  const half = base.stake.width / 2;
  const through = (e: number) => Array.from({ length: rings - 1 }, (_, t) => node(t + 1, e));
  const end = (side: Side, stake: number) =>
    rays.findIndex((ray) => ray.side === side && ray.stake === stake);
  const stakes = matStrands(cross, (part, index, nodes) => {
    const lies = part === 'lengthwise';
    const near = end(lies ? 'west' : 'south', index);
    const far = end(lies ? 'east' : 'north', index);
    const apart = nodes.slice(1).map(() => (lies ? cross.dx : cross.dy));
    return {
      part,
      index,
      nodes: [...through(near).reverse(), ...nodes, ...through(far)],
      places: [near, far],
      rest: [...border, half + step, ...apart, half + step, ...border],
      natural: domeCurvature(part, base.centreLift, size),
    };
  });
  // A fanned end starts on the corner crossing; its first step crosses half a stake both ways.
  const fans = rays.flatMap((ray, e) => (ray.stake < 0 ? [{ ray, e }] : []));
  return [
    ...stakes,
    ...fans.map(({ ray, e }, index): BaseStrand => {
      const [x, y] = [half + Math.abs(ray.outX) * step, half + Math.abs(ray.outY) * step];
      return {
        part: 'fanned',
        index,
        nodes: [ray.from, ...through(e)],
        places: [-1, e],
        rest: [Math.hypot(x, y), ...border],
        natural: 0,
      };
    }),
  ];
}

function borderCells(
  cross: Crossings,
  rays: readonly Ray[],
  loops: readonly (readonly number[])[],
  base: OvalBase,
): Pick<BasePart, 'cells' | 'triangles'> {
  const cells: BaseCell[] = matCells(cross);
  const triangles: [number, number, number][] = [];
  const step = base.border / loops.length;
  loops.forEach((nodes, t) => {
    rays.forEach((ray, e) => {
      const f = (e + 1) % rays.length;
      const next = rays[f]!;
      const [from, to] = t === 0 ? [ray.from, next.from] : [loops[t - 1]![e]!, loops[t - 1]![f]!];
      if (from === to) {
        triangles.push([from, nodes[f]!, nodes[e]!]);
        return;
      }
      const off = step * (t + 1);
      const apart = Math.hypot(
        next.x + next.outX * off - ray.x - ray.outX * off,
        next.y + next.outY * off - ray.y - ray.outY * off,
      );
      const wide = t === 0 ? step + base.stake.width / 2 : step;
      cells.push({ nodes: [nodes[e]!, from, to, nodes[f]!], wide, high: apart });
    });
  });
  return { cells, triangles };
}

/** Neighbours on one flat row keep their distance, as far as the lift lets them. */
function ties(nodes: readonly number[], start: Float64Array): BasePart['ties'] {
  return nodes.map((a, e) => {
    const b = nodes[(e + 1) % nodes.length]!;
    const length = Math.hypot(start[3 * a]! - start[3 * b]!, start[3 * a + 1]! - start[3 * b + 1]!);
    return { a, b, length };
  });
}

function ovalMirror(
  cross: Crossings,
  rays: readonly Ray[],
  rings: number,
  node: (t: number, e: number) => number,
  inner: number,
  across: 'x' | 'y',
): BaseMirror {
  const mat = matMirror(cross, across);
  const [flipX, flipY] = across === 'x' ? [-1, 1] : [1, -1];
  const same = (p: number, q: number) => Math.abs(p - q) < 1e-6;
  const place = rays.map((ray) =>
    rays.findIndex(
      (other) =>
        same(other.x, flipX * ray.x) &&
        same(other.y, flipY * ray.y) &&
        same(other.outX, flipX * ray.outX) &&
        same(other.outY, flipY * ray.outY),
    ),
  );
  const images = Array.from({ length: inner }, (_, at) => mat.node[at] ?? at);
  for (let t = 1; t < rings; t++) {
    rays.forEach((_, e) => {
      images[node(t, e)] = node(t, place[e]!);
    });
  }
  return { node: images, place };
}
