import type { BaseStrand } from '../base/basePart.ts';
import { secondMoment } from '../strand/section.ts';
import type { Layout } from './basketNet.ts';
import type { Stake } from './net.ts';

/**
 * Share of a stake's bending stiffness left where it turns up: next to none in a crease; in a roll, which
 * is pinched while the stakes are soaked, less than half. Common practice, no source. From 0.2 to 1 the
 * share moves the height of a demo by 1 % and the middle of its base by 3 mm.
 */
const creaseShare = 0.02;
const rollShare = 0.4;

/** The chains of all stakes: those of the base in order, then the second end of an odd place. */
export function wallStakes(layout: Layout): Stake[] {
  const { base, ends } = layout;
  const endAt = (place: number) => ends.findIndex((end) => end.place === place && !end.second);
  const stakes = base.strands.map((strand) =>
    chain(
      layout,
      strand,
      strand.places.map((place) => (place < 0 ? -1 : endAt(place))),
    ),
  );
  const second = ends.findIndex((end) => end.second === 1);
  if (second >= 0) {
    const { place } = ends[second]!;
    const { strand, far } = base.places[place]!;
    const host = base.strands[strand]!;
    // It lies along its host in the base and is held there: its own chain starts at the last node.
    const held: BaseStrand = {
      part: 'added',
      index: 0,
      nodes: [host.nodes.at(far ? -1 : 0)!],
      places: [-1, place],
      rest: [host.rest.at(far ? -1 : 0)!],
      natural: 0,
    };
    stakes.push(chain(layout, held, [-1, second]));
  }
  return stakes;
}

/** One chain: down the wall at the first place, along the base, up the wall at the second. */
function chain(layout: Layout, strand: BaseStrand, carried: readonly number[]): Stake {
  const { plan, rows: R, pitch, edge: edgeNode, wall, ends } = layout;
  const carries = [carried[0] ?? -1, carried[1] ?? -1] as const;
  const up = (end: number) => Array.from({ length: R }, (_, k) => wall(k + 1, end));
  const [near, far] = strand.places;
  const before = near < 0 ? [] : [...up(carries[0]).reverse(), edgeNode(near)];
  const after = far < 0 ? [] : [edgeNode(far), ...up(carries[1])];
  const nodes = Int32Array.from([...before, ...strand.nodes, ...after]);
  const edge = [near < 0 ? -1 : R, far < 0 ? -1 : nodes.length - 1 - R] as const;
  const full = plan.base.stake;
  const widthOf = (end: number) => ends[end]?.width ?? full.width;
  const width = new Float64Array(nodes.length).fill(full.width);
  if (near >= 0) width.fill(widthOf(carries[0]), 0, R);
  if (far >= 0) width.fill(widthOf(carries[1]), nodes.length - R);
  const turn = plan.base.upsett === 'creased' ? creaseShare : rollShare;
  const moment = secondMoment(full) / full.width;
  const stiffness = width.map((wide) => moment * wide);
  if (near >= 0) stiffness[edge[0]] = turn * moment * widthOf(carries[0]);
  if (far >= 0) stiffness[edge[1]] = turn * moment * widthOf(carries[1]);
  stiffness[0] = 0;
  stiffness[nodes.length - 1] = 0;
  const natural = new Float64Array(nodes.length);
  natural.fill(strand.natural, edge[0] + 1, far < 0 ? nodes.length : edge[1]);
  const steps = Array.from({ length: R }, (_, k) => (pitch[k]! + pitch[k + 1]!) / 2);
  return {
    part: strand.part,
    index: strand.index,
    strand: full,
    nodes,
    rest: Float64Array.from([
      ...(near < 0 ? [] : [...steps].reverse()),
      ...strand.rest,
      ...(far < 0 ? [] : steps),
    ]),
    stiffness,
    natural,
    width,
    edge,
    ends: carries,
  };
}
