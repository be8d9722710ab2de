import { baseSize } from '../../plan/baseSize.ts';
import type { BoardBase } from '../../plan/schema.ts';
import type { Side } from '../net/net.ts';
import type { BasePart, BaseStrand, Place } from './basePart.ts';
import { evenAngles, sideOf } from './round.ts';

/** A place on the board's edge and the way out of it. */
interface EdgePoint {
  readonly side: Side;
  readonly x: number;
  readonly y: number;
  readonly outX: number;
  readonly outY: number;
}

/**
 * The board: stakes stand in its slot, evenly round its edge, and leave it level. Nothing of it moves.
 * A node in the middle and one at the bottom of each slot complete the surface.
 */
export function boardBase(base: BoardBase, ends: number): BasePart {
  const size = baseSize(base);
  const edge = base.shape === 'round' ? roundEdge(base.length, ends) : straightEdge(size, ends);
  const inner = 1 + ends;
  const depth = Math.min(Math.max(base.slot, 1), 0.4 * Math.min(size.length, size.width));
  const start = new Float64Array(3 * (inner + ends));
  edge.forEach(({ x, y, outX, outY }, e) => {
    start.set([x - depth * outX, y - depth * outY, 0], 3 * (1 + e));
    start.set([x, y, 0], 3 * (inner + e));
  });
  const places = edge.map(
    ({ side, x, y, outX, outY }, e): Place => ({
      side,
      strand: e,
      far: 1,
      x,
      y,
      alongX: -outY,
      alongY: outX,
    }),
  );
  const image = (across: 'x' | 'y') => {
    const [flipX, flipY] = across === 'x' ? [-1, 1] : [1, -1];
    const place = edge.map((point) =>
      edge.findIndex(
        (other) =>
          Math.hypot(other.x - flipX * point.x, other.y - flipY * point.y) < 1e-6 * size.length,
      ),
    );
    return place.includes(-1) ? null : { place, node: [0, ...place.map((p) => 1 + p)] };
  };
  const nearest = (toX: number, toY: number) => {
    const off = edge.map(({ x, y }) => x * toX * size.width + y * toY * size.length);
    return 1 + off.indexOf(Math.max(...off));
  };
  return {
    inner,
    start,
    ring: [0, ...edge.map(() => 1)],
    rings: 2,
    places,
    strands: edge.map(
      (_, e): BaseStrand => ({
        part: 'stake',
        index: e,
        nodes: [1 + e],
        places: [-1, e],
        rest: [depth],
        natural: 0,
      }),
    ),
    cells: edge.map((_, e) => {
      const f = (e + 1) % ends;
      const high = Math.hypot(edge[f]!.x - edge[e]!.x, edge[f]!.y - edge[e]!.y);
      return { nodes: [inner + e, 1 + e, 1 + f, inner + f], wide: depth, high };
    }),
    triangles: edge.map((_, e) => [0, 1 + ((e + 1) % ends), 1 + e] as const),
    loops: [],
    ties: [],
    mirror: { x: image('x'), y: image('y') },
    frame: [nearest(-1, -1), nearest(1, -1), nearest(1, 1), nearest(-1, 1)],
    anchors: edge.map((_, e) => 1 + e),
    lift: null,
    rigid: true,
    oddPlace: () => places.findIndex(({ side }) => side === 'north'),
  };
}

function roundEdge(diameter: number, ends: number): EdgePoint[] {
  return Array.from(evenAngles(ends), (angle) => {
    const [outX, outY] = [Math.cos(angle), Math.sin(angle)];
    return { side: sideOf(angle), x: (outX * diameter) / 2, y: (outY * diameter) / 2, outX, outY };
  });
}

/** Evenly along a rectangle, counter-clockwise, as symmetric about the middle of the south side. */
function straightEdge(size: { readonly length: number; readonly width: number }, ends: number) {
  const { length, width } = size;
  const round = 2 * (length + width);
  const step = round / ends;
  const first = Math.ceil(-length / 2 / step - 0.5 - 1e-9);
  return Array.from({ length: ends }, (_, e): EdgePoint => {
    const s = ((((first + e + 0.5) * step + length / 2) % round) + round) % round;
    if (s < length) return { side: 'south', x: s - length / 2, y: -width / 2, outX: 0, outY: -1 };
    if (s < length + width) {
      return { side: 'east', x: length / 2, y: s - length - width / 2, outX: 1, outY: 0 };
    }
    if (s < 2 * length + width) {
      const x = 1.5 * length + width - s;
      return { side: 'north', x, y: width / 2, outX: 0, outY: 1 };
    }
    return { side: 'west', x: -length / 2, y: 2 * length + 1.5 * width - s, outX: -1, outY: 0 };
  });
}
