import type { OddEnd } from '../../plan/schema.ts';
import type { Net, Side, Stake } from '../net/net.ts';

/** A place on the base's edge where a stake leaves it, in the plane of the flat base. Lengths mm. */
export interface Place {
  readonly side: Side;
  /** Index into `BasePart.strands`, and which end of that strand this is. */
  readonly strand: number;
  readonly far: 0 | 1;
  readonly x: number;
  readonly y: number;
  /** Unit vector along the outline, counter-clockwise. */
  readonly alongX: number;
  readonly alongY: number;
}

/** What of a stake lies in the base: its nodes from near end to far end, and where it leaves the base. */
export interface BaseStrand {
  readonly part: Stake['part'];
  /** Place among the strands of its part, from 0. */
  readonly index: number;
  /** Inner nodes of the base in order. */
  readonly nodes: readonly number[];
  /** Places at which it goes on to the edge and the wall; −1 where it ends in the base. */
  readonly places: readonly [number, number];
  /** Lengths from node to node, the steps to the edge included, mm. */
  readonly rest: readonly number[];
  /** Curvature it is set to, 1/mm, positive where the middle is to rise. */
  readonly natural: number;
}

/** A cell of the base with its planned width (node 0 to 1) and height (1 to 2), mm. */
export interface BaseCell {
  readonly nodes: readonly [number, number, number, number];
  readonly wide: number;
  readonly high: number;
}

/** A base laid out flat: what every kind of base tells the net. Nodes 0 … inner − 1, then the places. */
export interface BasePart {
  readonly inner: number;
  /** x, y, z of inner nodes and places at the start, mm: flat, or raised by the centre lift. */
  readonly start: Float64Array;
  /** Ring of each inner node, from the middle outward; the edge is ring `rings`. */
  readonly ring: readonly number[];
  readonly rings: number;
  /** Counter-clockwise seen from above, from the west end of the south side. */
  readonly places: readonly Place[];
  readonly strands: readonly BaseStrand[];
  readonly cells: readonly BaseCell[];
  readonly triangles: readonly (readonly [number, number, number])[];
  /** Rows woven flat: closed loops of nodes that keep their smooth length, mm. */
  readonly loops: readonly { readonly nodes: readonly number[]; readonly girth: number }[];
  /** Distances that rows woven flat hold, but not strictly. */
  readonly ties: readonly { readonly a: number; readonly b: number; readonly length: number }[];
  /** Images of inner nodes and of places in the planes x = 0 and y = 0, or null. */
  readonly mirror: { readonly x: BaseMirror | null; readonly y: BaseMirror | null };
  readonly frame: Net['frame'];
  readonly anchors: readonly number[];
  readonly lift: Net['lift'];
  /** True for a board, whose nodes do not move. */
  readonly rigid: boolean;
  /** Place whose stake is split or has one added beside it. */
  readonly oddPlace: (at: OddEnd['at']) => number;
}

export interface BaseMirror {
  readonly node: readonly number[];
  readonly place: readonly number[];
}
