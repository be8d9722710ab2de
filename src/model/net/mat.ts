import { baseGaps, baseGirth, baseSize } from '../../plan/baseSize.ts';
import { bandOfRow, rowCount, rowPitch } from '../../plan/counts.ts';
import type { Plan } from '../../plan/schema.ts';
import { secondMoment } from '../strand/section.ts';
import { matCells } from './matCells.ts';
import { baseSample, dome, matLift } from './matLift.ts';
import { matMirror } from './matMirror.ts';
import type { Place, PlacedEnd } from './matPlaces.ts';
import { matPlaces, outlineSpacing, placedEnds } from './matPlaces.ts';
import { matStakes } from './matStakes.ts';
import type { End, Net, Row, Side } from './net.ts';
import { smoothLength } from './smoothLength.ts';
import type { BaseSpacing } from './spacing.ts';
import { rowSpacing } from './spacing.ts';
import { sweep } from './startShape.ts';

/** The mat laid out: what its stakes, cells and rows are numbered from. */
export interface MatLayout {
  readonly plan: Plan;
  readonly places: readonly Place[];
  readonly ends: readonly PlacedEnd[];
  readonly rows: number;
  /** Node of crossing (lengthwise i, crosswise j). */
  readonly crossing: (i: number, j: number) => number;
  /** Node of a place on the base's edge. */
  readonly edge: (place: number) => number;
  /** Node of end e at row k ≥ 1. */
  readonly wall: (k: number, e: number) => number;
}

/**
 * The net of a basket on a mat base: a node at every crossing of the base, one on the base's edge for
 * every place a stake leaves it, and one where each end crosses each row.
 *
 * @param girths planned girth by row, [0] the base girth, mm (see `girthLine`)
 */
export function matNet(plan: Plan, girths: ArrayLike<number>): Net {
  const layout = matLayout(plan);
  const { places, ends, rows: R } = layout;
  const a = plan.base.lengthwise;
  const b = plan.base.crosswise;
  const E = ends.length;
  const nodeCount = a * b + places.length + R * E;

  let start: Float64Array | null = null;
  const rows = matRows(layout, girths);
  const { stakes, stakeOfPlace } = matStakes(layout);
  const netEnds = ends.map((end, e): End => {
    const place = places[end.place] as Place;
    const nodes = Int32Array.from({ length: R + 1 }, (_, k) =>
      k === 0 ? layout.edge(end.place) : layout.wall(k, e),
    );
    const neighbour = (step: number) => places[(ends[(e + step + E) % E] as PlacedEnd).place];
    return {
      side: place.side,
      stake: stakeOfPlace(end),
      nodes,
      width: end.width,
      corner: neighbour(1)?.side !== place.side || neighbour(-1)?.side !== place.side,
    };
  });
  return {
    nodeCount,
    baseNodeCount: a * b,
    // Only asked for when the settling starts from it.
    get start() {
      start ??= startPositions(layout, rows);
      return start;
    },
    ring: rings(layout, nodeCount),
    stakes,
    rows,
    ends: netEnds,
    ...matCells(layout, rows),
    mirror: matMirror(layout, nodeCount),
    anchors: Int32Array.from(baseSample(layout), ([i, j]) => layout.crossing(i, j)),
    lift: matLift(layout),
    frame: [
      layout.crossing(0, 0),
      layout.crossing(0, b - 1),
      layout.crossing(a - 1, b - 1),
      layout.crossing(a - 1, 0),
    ],
  };
}

function matLayout(plan: Plan): MatLayout {
  const places = matPlaces(plan.base);
  const ends = placedEnds(plan, places);
  const { lengthwise: a, crosswise: b } = plan.base;
  return {
    plan,
    places,
    ends,
    rows: rowCount(plan),
    crossing: (i, j) => i * b + j,
    edge: (place) => a * b + place,
    wall: (k, e) => a * b + places.length + (k - 1) * ends.length + e,
  };
}

function matRows(
  { plan, places, ends, rows: R, edge, wall }: MatLayout,
  girths: ArrayLike<number>,
) {
  const base = baseSpacing(plan, places, ends, R);
  const bands = plan.bands.flatMap(({ rows }, band) => Array<number>(rows).fill(band));
  const corners = plan.base.corners;
  const rows: Row[] = [
    {
      nodes: Int32Array.from(places, (_, place) => edge(place)),
      girth: girths[0] ?? 0,
      pitch: 0,
      stiffness: 0,
      spacing: outlineSpacing(
        places,
        places.map((_, place) => ({ place, offset: 0, width: 0, second: 0 })),
      ),
      grip: new Float64Array(places.length),
      hold: new Float64Array(places.length),
      cornerLength: base.cornerLength,
      band: -1,
    },
  ];
  let woven = 0;
  let free = 0;
  for (let k = 1; k <= R; k++) {
    const pitch = rowPitch(plan, k);
    const { weaver, weave } = bandOfRow(plan, k);
    const girth = girths[k] ?? 0;
    if (k <= corners.rows) free = woven + pitch;
    const spacing = rowSpacing(base, corners, k, girth, woven + pitch / 2, free);
    rows.push({
      nodes: Int32Array.from(ends, (_, e) => wall(k, e)),
      girth,
      pitch,
      stiffness: secondMoment(weaver) * (weave === 'twined' ? 2 : 1),
      ...spacing,
      hold: cornerHold(base, corners, k),
      band: bands[k - 1] ?? 0,
    });
    woven += pitch;
  }
  return rows;
}

/** Turn set into the weaver at the two stakes of each corner: a share of π/4, falling with the rows. */
function cornerHold(
  base: BaseSpacing,
  { hold, holdRows }: Plan['base']['corners'],
  row: number,
): Float64Array {
  const share = holdRows > 1 ? hold * Math.max(0, 1 - (row - 1) / (holdRows - 1)) : 0;
  const only = holdRows === 1 && row === 1 ? hold : share;
  const ends = base.chord.length;
  return Float64Array.from(base.corner, (isCorner, j) => {
    const before = base.corner[(j + ends - 1) % ends];
    return isCorner || before ? (only * Math.PI) / 4 : 0;
  });
}

function baseSpacing(
  plan: Plan,
  places: readonly Place[],
  ends: readonly PlacedEnd[],
  R: number,
): BaseSpacing {
  const along = outlineSpacing(places, ends);
  const outline = endOutline(places, ends);
  const corner = ends.map((end, j) => {
    const next = ends[(j + 1) % ends.length] as PlacedEnd;
    return places[end.place]?.side !== places[next.place]?.side;
  });
  const chord = along.map((length, j) => {
    if (!corner[j]) return length;
    const k = (j + 1) % ends.length;
    return Math.hypot(
      (outline[2 * k] ?? 0) - (outline[2 * j] ?? 0),
      (outline[2 * k + 1] ?? 0) - (outline[2 * j + 1] ?? 0),
    );
  });
  const flat = Float64Array.from({ length: 3 * ends.length }, (_, i) =>
    i % 3 === 2 ? 0 : (outline[2 * Math.floor(i / 3) + (i % 3)] ?? 0),
  );
  const girth = baseGirth(plan.base);
  return {
    chord,
    corner,
    pair: ends.findIndex((end, j) => end.place === ends[j + 1]?.place),
    girth,
    cornerLength: girth - smoothLength(flat, chord),
    evening: roundingLength(plan, girth, ends.length, R, 4),
  };
}

/**
 * Height over which mode n of the outline dies away up the wall, mm: 1/b of a beam on an elastic
 * foundation (Hetényi 1946; derived for rows on stakes in the shared reference, section 1.5),
 * b⁴ = (n² − 1)²·B_w·c / (4·p·R⁴·B_s·(1 + 1/n²)).
 */
function roundingLength(plan: Plan, girth: number, ends: number, rows: number, n: number): number {
  const middle = Math.max(1, Math.ceil(rows / 2));
  const radius = girth / (2 * Math.PI);
  const spacing = girth / ends;
  const weaver = secondMoment(bandOfRow(plan, middle).weaver);
  const stake = secondMoment(plan.base.stake);
  const b4 =
    ((n * n - 1) ** 2 * weaver * spacing) /
    (4 * rowPitch(plan, middle) * radius ** 4 * stake * (1 + 1 / (n * n)));
  return b4 ** -0.25;
}

/** The way round the base, counter-clockwise, along each side. */
const onward: Readonly<Record<Side, readonly [x: number, y: number]>> = {
  south: [1, 0],
  east: [0, 1],
  north: [-1, 0],
  west: [0, -1],
};

function endOutline(places: readonly Place[], ends: readonly PlacedEnd[]): Float64Array {
  const outline = new Float64Array(2 * ends.length);
  ends.forEach(({ place, offset }, e) => {
    const { side, x, y } = places[place] as Place;
    const [alongX, alongY] = onward[side];
    outline[2 * e] = x + alongX * offset;
    outline[2 * e + 1] = y + alongY * offset;
  });
  return outline;
}

function startPositions(layout: MatLayout, rows: readonly Row[]): Float64Array {
  const { plan, places, ends, crossing, edge, wall } = layout;
  const { length, width } = baseSize(plan.base);
  const gaps = baseGaps(plan.base);
  const w = plan.base.stake.width;
  const start = new Float64Array(3 * (wall(rows.length - 1, ends.length - 1) + 1));
  const lift = (x: number, y: number) => plan.base.centreLift * dome(length, width, x, y);
  const put = (node: number, x: number, y: number, z: number) => start.set([x, y, z], 3 * node);
  for (let i = 0; i < plan.base.lengthwise; i++) {
    for (let j = 0; j < plan.base.crosswise; j++) {
      const x = -length / 2 + w / 2 + j * (w + gaps.crosswise);
      const y = -width / 2 + w / 2 + i * (w + gaps.lengthwise);
      put(crossing(i, j), x, y, lift(x, y));
    }
  }
  places.forEach(({ x, y }, place) => {
    put(edge(place), x, y, lift(x, y));
  });
  const outline = endOutline(places, ends);
  let wallHeight = 0;
  const steps = rows.slice(1).map((row, index) => {
    const before = rows[index]?.pitch ?? 0;
    const step = (before + row.pitch) / 2;
    wallHeight += step;
    return { step, length: row.girth - row.cornerLength, spacing: row.spacing, wall: wallHeight };
  });
  const rounding = roundingLength(plan, rows[0]?.girth ?? 1, ends.length, rows.length - 1, 2);
  sweep({ outline, rows: steps, rounding }).forEach((loop, index) => {
    start.set(loop, 3 * wall(index + 1, 0));
  });
  ends.forEach(({ place }, e) => {
    const { x, y } = places[place] as Place;
    for (let k = 1; k < rows.length; k++) {
      const z = 3 * wall(k, e) + 2;
      start[z] = (start[z] ?? 0) + lift(x, y) * Math.exp(-k / 4);
    }
  });
  return start;
}

function rings({ plan, places, ends, rows, crossing, edge, wall }: MatLayout, nodeCount: number) {
  const { lengthwise: a, crosswise: b } = plan.base;
  const ring = new Int32Array(nodeCount);
  const inner = Math.ceil(Math.min(a, b) / 2);
  for (let i = 0; i < a; i++) {
    for (let j = 0; j < b; j++) {
      ring[crossing(i, j)] = inner - 1 - Math.min(i, a - 1 - i, j, b - 1 - j);
    }
  }
  places.forEach((_, place) => {
    ring[edge(place)] = inner;
  });
  for (let k = 1; k <= rows; k++) {
    for (let e = 0; e < ends.length; e++) ring[wall(k, e)] = inner + k;
  }
  return ring;
}
