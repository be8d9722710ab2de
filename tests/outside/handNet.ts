/** Nets made by hand, for shapes that have a closed form and no base. */
import type { Net, Row, Stake } from '../../src/model/net/net.ts';
import type { Strand } from '../../src/plan/schema.ts';

type Point = readonly [x: number, y: number, z: number];

/** What the solver does not look at: sections enter by their stiffness alone. */
const strand: Strand = { section: 'round', width: 1, thickness: 1 };

/** A stake through `nodes` with segments of `rest` mm, straight by nature and free to turn at its tips. */
export function chain(nodes: readonly number[], rest: readonly number[], stiffness: number): Stake {
  const last = nodes.length - 1;
  return {
    part: 'stake',
    index: 0,
    strand,
    nodes: Int32Array.from(nodes),
    rest: Float64Array.from(rest),
    stiffness: Float64Array.from(nodes, (_, i) => (i === 0 || i === last ? 0 : stiffness)),
    natural: new Float64Array(nodes.length),
    width: new Float64Array(nodes.length).fill(1),
    edge: [-1, -1],
    ends: [-1, -1],
  };
}

/** A loop whose ends are held evenly spaced, as hard as those of a wall are. */
export function loop(
  nodes: readonly number[],
  girth: number,
  pitch: number,
  stiffness: number,
): Row {
  const column = (value: number) => new Float64Array(nodes.length).fill(value);
  return {
    nodes: Int32Array.from(nodes),
    girth,
    pitch,
    stiffness,
    spacing: column(girth / nodes.length),
    grip: column(1),
    hold: column(0),
    cornerLength: 0,
    band: 0,
  };
}

/** What a net made by hand consists of. */
export interface HandNet {
  readonly points: readonly Point[];
  readonly ring: readonly number[];
  readonly stakes: readonly Stake[];
  /** Row 0 carries no energy; it tells the spacing and, by its nodes, what lies below row 1. */
  readonly rows: readonly Row[];
  /** Nodes that do not move. */
  readonly fixed?: readonly number[];
  /** Nodes whose mean place and turn are kept, where none are fixed. */
  readonly anchors?: readonly number[];
}

/** The net of `made`, without cells: nothing resists shear, and no mirror plane is used. */
export function handNet({ points, ring, stakes, rows, fixed = [], anchors = [] }: HandNet): Net {
  const around = rows[0]?.nodes ?? Int32Array.of(0);
  const quarter = (part: number) => around[Math.floor((part * around.length) / 4)] ?? 0;
  return {
    nodeCount: points.length,
    baseNodeCount: 0,
    start: Float64Array.from(points.flat()),
    ring: Int32Array.from(ring),
    stakes,
    rows,
    ends: Array.from(around, (_, e) => ({
      side: 'south',
      stake: e,
      nodes: Int32Array.from(rows, (row) => row.nodes[e] ?? 0),
      width: 1,
      corner: false,
    })),
    quads: new Int32Array(0),
    diagonals: new Float64Array(0),
    cells: new Float64Array(0),
    triangles: new Int32Array(0),
    mirror: { x: null, y: null },
    frame: [quarter(0), quarter(1), quarter(2), quarter(3)],
    flatRows: [],
    ties: { nodes: new Int32Array(0), length: new Float64Array(0) },
    heldWidths: { nodes: new Int32Array(0), length: new Float64Array(0) },
    fixed: Uint8Array.from(points, (_, node) => (fixed.includes(node) ? 1 : 0)),
    anchors: Int32Array.from(anchors),
    lift: null,
  };
}

/** A wall of rows on stakes that are hinged to a base edge which does not move. Lengths mm. */
export interface HingedWall {
  readonly ends: number;
  readonly pitch: number;
  /** Girth of each row from 1. */
  readonly girths: readonly number[];
  readonly stakeStiffness: number;
  readonly weaverStiffness: number;
  /** Out from the axis and along the run of each end on the base's edge, from its angle. */
  readonly edge: (angle: number) => readonly [out: number, along: number];
  /** Start shape: radius and height of row k, round. */
  readonly start: (row: number) => readonly [radius: number, height: number];
}

/** The net of a hinged wall: node `k·ends + e` is end e at row k, row 0 is the fixed edge. */
export function hingedWall(wall: HingedWall): Net {
  const { ends, pitch, girths, stakeStiffness, weaverStiffness } = wall;
  const rows = girths.length;
  const node = (k: number, e: number) => k * ends + e;
  const around = Array.from({ length: ends }, (_, e) => e);
  const points = Array.from({ length: (rows + 1) * ends }, (_, i): Point => {
    const angle = (2 * Math.PI * (i % ends)) / ends;
    const k = Math.floor(i / ends);
    const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
    const [radius, z] = wall.start(k);
    if (k > 0) return [radius * cos, radius * sin, z];
    const [out, along] = wall.edge(angle);
    return [out * cos - along * sin, out * sin + along * cos, 0];
  });
  const stakes = around.map((e) =>
    chain(
      Array.from({ length: rows + 1 }, (_, k) => node(k, e)),
      Array<number>(rows).fill(pitch),
      stakeStiffness,
    ),
  );
  const loops = [0, ...girths].map((girth, k) =>
    loop(
      around.map((e) => node(k, e)),
      k === 0 ? (girths[0] ?? 0) : girth,
      k === 0 ? 0 : pitch,
      k === 0 ? 0 : weaverStiffness,
    ),
  );
  return handNet({
    points,
    ring: points.map((_, i) => Math.floor(i / ends)),
    stakes,
    rows: loops,
    fixed: around,
  });
}
