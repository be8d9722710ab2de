import type { Plan } from '../../plan/schema.ts';

/** The strand of a stake or weaver: section, width and thickness in mm. */
export type Strand = Plan['bands'][number]['weaver'];

/** Where an end leaves the base: sides run counter-clockwise from the south (−y), seen from above. */
export type Side = 'south' | 'east' | 'north' | 'west';

/** One stake as a chain of nodes, from the top of one of its ends through the base to the other. */
export interface Stake {
  /** What the cut list calls it. */
  readonly part: 'lengthwise' | 'crosswise' | 'spoke' | 'fanned' | 'stake' | 'added';
  /** Place among the stakes of its part, from 0. */
  readonly index: number;
  readonly strand: Strand;
  /** Nodes along the stake. */
  readonly nodes: Int32Array;
  /** Length of each segment, mm; one fewer than `nodes`. */
  readonly rest: Float64Array;
  /** Bending stiffness at each node over Young's modulus (second moment of area), mm⁴; 0 at the tips. */
  readonly stiffness: Float64Array;
  /** Curvature the stake is set to at each node, 1/mm, positive where the base is to rise in the middle. */
  readonly natural: Float64Array;
  /** Width at each node, mm (a split stake is half as wide beyond the base edge). */
  readonly width: Float64Array;
  /** Positions in `nodes` of the two base-edge nodes; −1 where the stake has no such end. */
  readonly edge: readonly [number, number];
  /** Ends carried by the first and the last node; −1 where there is none. */
  readonly ends: readonly [number, number];
}

/** One row of weaving (or, as row 0, the base edge): a closed loop of nodes, counter-clockwise. */
export interface Row {
  /** Node of each end in turn; row 0 has one node for both halves of a split stake. */
  readonly nodes: Int32Array;
  /** Planned girth, mm: length of the smooth loop in the middle of the wall. */
  readonly girth: number;
  /** Wall taken up by the row, mm; 0 for row 0. */
  readonly pitch: number;
  /** Bending stiffness over Young's modulus, mm⁴. */
  readonly stiffness: number;
  /** Spacing the ends are held at, one value a segment (node j to j + 1), mm; sums to about `girth`. */
  readonly spacing: Float64Array;
  /** How far each spacing is held: 0 free … 1 like every other; more where pins hold it. */
  readonly grip: Float64Array;
  /** Turn the weaver is set to at each node, radians (corner hold). */
  readonly hold: Float64Array;
  /** Length a weaver round sharp corners has beyond the smooth loop through the stakes' middles, mm. */
  readonly cornerLength: number;
  /** Index of the band in the plan; −1 for row 0. */
  readonly band: number;
}

/** One end of a stake: the line a maker sees going up the wall. */
export interface End {
  readonly side: Side;
  /** Index into `Net.stakes`. */
  readonly stake: number;
  /** Node at each row, 0 … R. */
  readonly nodes: Int32Array;
  /** Width of the strand in the wall, mm. */
  readonly width: number;
  /** True when this end is the one that lies next to a corner of the base. */
  readonly corner: boolean;
}

/** The basket as a net, before and apart from any shape. Lengths mm. */
export interface Net {
  readonly nodeCount: number;
  /** Nodes 0 … baseNodeCount − 1 are crossings of the base; then row 0, row 1, … follow in order. */
  readonly baseNodeCount: number;
  /** Start shape, x, y, z for each node, mm. */
  readonly start: Float64Array;
  /** Nodes numbered outward: the ring each node is in (base rings, then rows). */
  readonly ring: Int32Array;
  readonly stakes: readonly Stake[];
  /** Row 0 (the base edge) to row R. */
  readonly rows: readonly Row[];
  /** Ends counter-clockwise from the west end of the south side. */
  readonly ends: readonly End[];
  /** Four-sided cells, four nodes each, counter-clockwise seen from outside (below the base). */
  readonly quads: Int32Array;
  /** Rest length of either diagonal of each quad (both are the same), mm. */
  readonly diagonals: Float64Array;
  /** Planned width (node 0 to 1) and height (1 to 2) of each quad, mm. */
  readonly cells: Float64Array;
  /** Three-sided cells (base corners, the foot of a split stake). */
  readonly triangles: Int32Array;
  /** Mirror image of each node in the plane x = 0 (or y = 0), where the net has that symmetry. */
  readonly mirror: { readonly x: Int32Array | null; readonly y: Int32Array | null };
  /** The four corner crossings of the base, counter-clockwise: they carry its frame. */
  readonly frame: readonly [number, number, number, number];
  /** Rows woven flat in the base: closed loops that keep their smooth length, mm. */
  readonly flatRows: readonly {
    readonly nodes: Int32Array;
    readonly girth: number;
    readonly spacing: Float64Array;
    readonly stiffness: number;
  }[];
  /** Distances held like the spacing of ends, and not strictly: node pairs and lengths, mm. */
  readonly ties: { readonly nodes: Int32Array; readonly length: Float64Array };
  /** Distances held like those of stakes: a fixed handle's width between two ends, mm. */
  readonly heldWidths: { readonly nodes: Int32Array; readonly length: Float64Array };
  /** True for the nodes of a board, which do not move. */
  readonly fixed: Uint8Array;
  /** Crossings spread over the base: their mean place and turn are kept still while settling. */
  readonly anchors: Int32Array;
  /**
   * Centre lift as a held height (beside the curvature of its dome, `Stake.natural`): Σ weight · (height of node) is held at `height`, mm. The weights are
   * those of a palm pushing the middle up against the corners, and add up to 0. Null for a flat base.
   */
  readonly lift: {
    readonly nodes: Int32Array;
    readonly weights: Float64Array;
    readonly height: number;
  } | null;
}
