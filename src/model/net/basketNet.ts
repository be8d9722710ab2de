import { rowCount, rowPitch } from '../../plan/counts.ts';
import type { Plan } from '../../plan/schema.ts';
import { layOutBase, sharesPlace } from '../base/base.ts';
import type { BasePart } from '../base/basePart.ts';
import { secondMoment } from '../strand/section.ts';
import { heldWidths } from './heldWidths.ts';
import type { End, Net } from './net.ts';
import { netMirror } from './netMirror.ts';
import type { PlacedEnd } from './placedEnds.ts';
import { placedEnds } from './placedEnds.ts';
import { wallCells } from './wallCells.ts';
import type { WallRows } from './wallRows.ts';
import { wallRows } from './wallRows.ts';
import { wallStakes } from './wallStakes.ts';
import { wallStart } from './wallStart.ts';

/** A basket laid out: how its nodes are numbered. */
export interface Layout {
  readonly plan: Plan;
  readonly base: BasePart;
  readonly ends: readonly PlacedEnd[];
  readonly rows: number;
  /** Pitch of each row, mm; 0 for row 0. */
  readonly pitch: Float64Array;
  /** Node of a place on the base's edge. */
  readonly edge: (place: number) => number;
  /** Node of end e at row k ≥ 1. */
  readonly wall: (k: number, e: number) => number;
}

/**
 * The net of a basket: the nodes of its base, one on the base's edge for every place a stake leaves it, and
 * one where each end crosses each row.
 *
 * @param girths planned girth by row, [0] the base girth, mm (see `girthLine`)
 */
export function basketNet(plan: Plan, girths: ArrayLike<number>): Net {
  const layout = layOut(plan);
  const { base, ends, rows: R } = layout;
  const nodeCount = base.inner + base.places.length + R * ends.length;
  const wall = wallRows(layout, girths);
  let start: Float64Array | null = null;
  return {
    nodeCount,
    baseNodeCount: base.inner,
    // Only asked for when the settling starts from it.
    get start() {
      start ??= wallStart(layout, wall);
      return start;
    },
    ring: rings(layout, nodeCount),
    stakes: wallStakes(layout),
    rows: wall.rows,
    ends: netEnds(layout),
    ...wallCells(layout, wall.rows),
    mirror: netMirror(layout, nodeCount),
    flatRows: flatRows(layout, wall),
    ties: {
      nodes: Int32Array.from(base.ties.flatMap(({ a, b }) => [a, b])),
      length: Float64Array.from(base.ties, ({ length }) => length),
    },
    heldWidths: heldWidths(layout, wall.rows),
    fixed: new Uint8Array(nodeCount).fill(base.rigid ? 1 : 0, 0, base.inner + base.places.length),
    anchors: Int32Array.from(base.anchors),
    lift: base.lift,
    frame: base.frame,
  };
}

function layOut(plan: Plan): Layout {
  const base = layOutBase(plan);
  const ends = placedEnds(plan, base, sharesPlace(plan));
  const { inner, places } = base;
  return {
    plan,
    base,
    ends,
    rows: rowCount(plan),
    pitch: pitches(plan),
    edge: (place) => inner + place,
    wall: (k, e) => inner + places.length + (k - 1) * ends.length + e,
  };
}

function pitches(plan: Plan): Float64Array {
  const pitch = [0];
  let row = 1;
  for (const { rows } of plan.bands) {
    const own = rowPitch(plan, row);
    for (let k = 0; k < rows; k++) pitch.push(own);
    row += rows;
  }
  return Float64Array.from(pitch);
}

function netEnds({ base, ends, rows, edge, wall }: Layout): End[] {
  const second = base.strands.length;
  return ends.map((end, e): End => {
    const place = base.places[end.place]!;
    const nodes = new Int32Array(rows + 1);
    nodes[0] = edge(end.place);
    for (let k = 1; k <= rows; k++) nodes[k] = wall(k, e);
    const side = (step: number) =>
      base.places[ends[(e + step + ends.length) % ends.length]!.place]?.side;
    return {
      side: place.side,
      stake: end.second ? second : place.strand,
      nodes,
      width: end.width,
      corner: side(1) !== place.side || side(-1) !== place.side,
    };
  });
}

/**
 * The flat rows, few in the net for many in the basket: each is as stiff as all the rows it stands for,
 * woven of what the first row of the wall is woven of.
 */
function flatRows({ plan, base }: Layout, { rows }: WallRows): Net['flatRows'] {
  const pitch = rows[1]?.pitch ?? plan.base.stake.width;
  const single = rows[1]?.stiffness ?? secondMoment(plan.base.stake);
  return base.loops.map(({ nodes, girth }, ring) => {
    const below = base.loops[ring - 1]?.girth ?? 0;
    const stands = Math.max(1, (girth - below) / (2 * Math.PI * pitch));
    return {
      nodes: Int32Array.from(nodes),
      girth,
      spacing: new Float64Array(nodes.length).fill(girth / nodes.length),
      stiffness: single * stands,
    };
  });
}

function rings({ base, ends, rows, edge, wall }: Layout, nodeCount: number): Int32Array {
  const ring = new Int32Array(nodeCount);
  ring.set(base.ring);
  base.places.forEach((_, place) => {
    ring[edge(place)] = base.rings;
  });
  for (let k = 1; k <= rows; k++) ring.fill(base.rings + k, wall(k, 0), wall(k, 0) + ends.length);
  return ring;
}
