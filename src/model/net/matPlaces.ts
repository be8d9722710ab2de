import { baseGaps, baseSize } from '../../plan/baseSize.ts';
import type { Plan } from '../../plan/schema.ts';
import type { Side } from './net.ts';

/** A place on the edge of the mat where a stake leaves it. Lengths mm, base centred on the origin. */
export interface Place {
  readonly side: Side;
  /** Which stake of its part, from 0: crosswise ones on south and north, lengthwise on east and west. */
  readonly stake: number;
  /** 0 for the south or west end of the stake, 1 for the north or east end. */
  readonly far: 0 | 1;
  readonly x: number;
  readonly y: number;
}

/** One end at its place: a split or added stake gives a place two. */
export interface PlacedEnd {
  readonly place: number;
  /** Offset along the outline, counter-clockwise, mm. */
  readonly offset: number;
  readonly width: number;
  /** 0, or 1 for the second end at the place. */
  readonly second: 0 | 1;
}

/** The places of the mat counter-clockwise from the west end of the south side. */
export function matPlaces(base: Plan['base']): Place[] {
  const gaps = baseGaps(base);
  const { length, width } = baseSize(base);
  const w = base.stake.width;
  const x = (j: number) => -length / 2 + w / 2 + j * (w + gaps.crosswise);
  const y = (i: number) => -width / 2 + w / 2 + i * (w + gaps.lengthwise);
  const a = base.lengthwise;
  const b = base.crosswise;
  const places: Place[] = [];
  for (let j = 0; j < b; j++)
    places.push({ side: 'south', stake: j, far: 0, x: x(j), y: -width / 2 });
  for (let i = 0; i < a; i++)
    places.push({ side: 'east', stake: i, far: 1, x: length / 2, y: y(i) });
  for (let j = b - 1; j >= 0; j--)
    places.push({ side: 'north', stake: j, far: 1, x: x(j), y: width / 2 });
  for (let i = a - 1; i >= 0; i--)
    places.push({ side: 'west', stake: i, far: 0, x: -length / 2, y: y(i) });
  return places;
}

/** The place whose stake is split or has one added beside it; −1 where there is none. */
function oddPlace({ base, oddEnd }: Plan): number {
  if (oddEnd.kind === 'none') return -1;
  const { length, width } = baseSize(base);
  if (oddEnd.at === 'corner') return base.crosswise - 1;
  const onSouth = (oddEnd.at === 'middle of a long side') === length >= width;
  if (onSouth) return (base.crosswise - 1) >> 1;
  return base.crosswise + ((base.lengthwise - 1) >> 1);
}

/** Ends in order round the base. Halves of a split stake lie edge to edge, an added one beside it. */
export function placedEnds(plan: Plan, places: readonly Place[]): PlacedEnd[] {
  const odd = oddPlace(plan);
  const full = plan.base.stake.width;
  const part = plan.oddEnd.kind === 'split' ? full / 2 : full;
  return places.flatMap((_, place): PlacedEnd[] =>
    place === odd
      ? [
          { place, offset: -part / 2, width: part, second: 0 },
          { place, offset: part / 2, width: part, second: 1 },
        ]
      : [{ place, offset: 0, width: full, second: 0 }],
  );
}

/** Distance along the base's outline from each end to the next, going round sharp corners, mm. */
export function outlineSpacing(places: readonly Place[], ends: readonly PlacedEnd[]): Float64Array {
  return Float64Array.from(ends, (end, j) => {
    const next = ends[(j + 1) % ends.length] as PlacedEnd;
    const from = places[end.place] as Place;
    const to = places[next.place] as Place;
    return Math.abs(to.x - from.x) + Math.abs(to.y - from.y) + next.offset - end.offset;
  });
}
