import { baseGaps, baseSize } from '../../plan/baseSize.ts';
import { rowPitch } from '../../plan/counts.ts';
import { secondMoment } from '../strand/section.ts';
import type { MatLayout } from './mat.ts';
import type { Place, PlacedEnd } from './matPlaces.ts';
import type { Stake, Strand } from './net.ts';

/**
 * Share of a stake's bending stiffness left where it turns up: next to none in a crease; in a roll, which
 * is pinched while the stakes are soaked, less than half. Common practice, no source. From 0.2 to 1 the
 * share moves the height of a demo by 1 % and the middle of its base by 3 mm.
 */
const creaseShare = 0.02;
const rollShare = 0.4;

/** The chains of the mat's stakes, and which of them each end belongs to. */
export function matStakes(layout: MatLayout): {
  readonly stakes: Stake[];
  readonly stakeOfPlace: (end: PlacedEnd) => number;
} {
  const { plan, places, ends } = layout;
  const { lengthwise: a, crosswise: b } = plan.base;
  const endAt = (place: number, second: 0 | 1) =>
    ends.findIndex((end) => end.place === place && end.second === second);
  const placeOf = (lengthwise: boolean, stake: number, far: 0 | 1) =>
    places.findIndex(
      (place) =>
        place.stake === stake &&
        place.far === far &&
        (place.side === 'east' || place.side === 'west') === lengthwise,
    );
  const stakes: Stake[] = [];
  for (let i = 0; i < a; i++) {
    const chain = Array.from({ length: b }, (_, j) => layout.crossing(i, j));
    const [from, to] = [placeOf(true, i, 0), placeOf(true, i, 1)];
    stakes.push(stake(layout, 'lengthwise', i, chain, [from, to], [endAt(from, 0), endAt(to, 0)]));
  }
  for (let j = 0; j < b; j++) {
    const chain = Array.from({ length: a }, (_, i) => layout.crossing(i, j));
    const [from, to] = [placeOf(false, j, 0), placeOf(false, j, 1)];
    stakes.push(stake(layout, 'crosswise', j, chain, [from, to], [endAt(from, 0), endAt(to, 0)]));
  }
  const second = ends.findIndex((end) => end.second === 1);
  if (second >= 0) {
    const place = ends[second]?.place ?? 0;
    const own = places[place] as Place;
    const lengthwise = own.side === 'east' || own.side === 'west';
    const host = stakes[lengthwise ? own.stake : a + own.stake] as Stake;
    // It lies along its host in the base and is held there: its own chain starts at the last crossing.
    const held = host.nodes[own.far ? host.edge[1] - 1 : host.edge[0] + 1] ?? 0;
    stakes.push(stake(layout, 'added', 0, [held], [-1, place], [-1, second]));
  }
  const stakeOfPlace = ({ place, second: isSecond }: PlacedEnd) => {
    if (isSecond) return stakes.length - 1;
    const own = places[place] as Place;
    return own.side === 'east' || own.side === 'west' ? own.stake : a + own.stake;
  };
  return { stakes, stakeOfPlace };
}

/** One chain: down the wall at the first place, along the base, up the wall at the second. */
function stake(
  layout: MatLayout,
  part: Stake['part'],
  index: number,
  base: readonly number[],
  places: readonly [number, number],
  ends: readonly [number, number],
): Stake {
  const { plan, rows: R } = layout;
  const up = (end: number) => Array.from({ length: R }, (_, k) => layout.wall(k + 1, end));
  const before = places[0] < 0 ? [] : [...up(ends[0]).reverse(), layout.edge(places[0])];
  const after = places[1] < 0 ? [] : [layout.edge(places[1]), ...up(ends[1])];
  const nodes = Int32Array.from([...before, ...base, ...after]);
  const edge: [number, number] = [
    places[0] < 0 ? -1 : R,
    places[1] < 0 ? -1 : nodes.length - 1 - R,
  ];
  const strand: Strand = plan.base.stake;
  const widthOf = (end: number) => layout.ends[end]?.width ?? strand.width;
  const inWall = (at: number): number => {
    if (edge[0] >= 0 && at < edge[0]) return ends[0];
    if (edge[1] >= 0 && at > edge[1]) return ends[1];
    return -1;
  };
  const width = Float64Array.from(nodes, (_, at) =>
    inWall(at) < 0 ? strand.width : widthOf(inWall(at)),
  );
  const crease = plan.base.upsett === 'creased' ? creaseShare : rollShare;
  const stiffness = Float64Array.from(nodes, (_, at) => {
    if (at === 0 || at === nodes.length - 1) return 0;
    const side = edge.indexOf(at);
    const wide = side < 0 ? width[at] : widthOf(ends[side] ?? -1);
    const own = secondMoment({ ...strand, width: wide ?? strand.width });
    return side < 0 ? own : crease * own;
  });
  return {
    part,
    index,
    strand,
    nodes,
    rest: segments(layout, nodes, edge, part),
    stiffness,
    natural: domeCurvature(layout, nodes.length, edge, part),
    width,
    edge,
    ends,
  };
}

/** Rest lengths: rows are one pitch apart, crossings one stake and gap, the edge half a stake out. */
function segments(
  { plan, rows: R }: MatLayout,
  nodes: Int32Array,
  edge: readonly [number, number],
  part: Stake['part'],
): Float64Array {
  const pitch = (k: number) => (k < 1 ? 0 : rowPitch(plan, k));
  const step = (k: number) => (pitch(k) + pitch(k - 1)) / 2;
  const w = plan.base.stake.width;
  const gaps = baseGaps(plan.base);
  const along = part === 'lengthwise' ? gaps.crosswise : gaps.lengthwise;
  return Float64Array.from({ length: nodes.length - 1 }, (_, at) => {
    if (edge[0] >= 0 && at < edge[0]) return step(R - at);
    if (edge[1] >= 0 && at >= edge[1]) return step(at - edge[1] + 1);
    const atEdge = at === edge[0] || at === edge[1] - 1;
    return atEdge ? w / 2 : w + along;
  });
}

/** The dome of the centre lift as curvature: 4·lift over the base's length (or width) squared. */
function domeCurvature(
  { plan }: MatLayout,
  count: number,
  edge: readonly [number, number],
  part: Stake['part'],
): Float64Array {
  const natural = new Float64Array(count);
  if (part === 'added') return natural;
  const { length, width } = baseSize(plan.base);
  const span = part === 'lengthwise' ? length : width;
  natural.fill((4 * plan.base.centreLift) / span ** 2, edge[0] + 1, edge[1]);
  return natural;
}
