import type { Plan } from '../../plan/schema.ts';
import type { BasePart } from '../base/basePart.ts';

/** One end at its place: a split or added stake gives a place two. */
export interface PlacedEnd {
  readonly place: number;
  /** Offset along the outline, counter-clockwise, mm. */
  readonly offset: number;
  readonly width: number;
  /** 0, or 1 for the second end at the place. */
  readonly second: 0 | 1;
}

/** Ends in order round the base. Halves of a split stake lie edge to edge, an added one beside it. */
export function placedEnds(plan: Plan, base: BasePart, paired: boolean): PlacedEnd[] {
  const odd = paired ? base.oddPlace(plan.oddEnd.at) : -1;
  const full = plan.base.stake.width;
  const part = plan.oddEnd.kind === 'split' ? full / 2 : full;
  return base.places.flatMap((_, place): PlacedEnd[] =>
    place === odd
      ? [
          { place, offset: -part / 2, width: part, second: 0 },
          { place, offset: part / 2, width: part, second: 1 },
        ]
      : [{ place, offset: 0, width: full, second: 0 }],
  );
}

/** x, y of each end on the outline of the flat base, mm. */
export function endOutline({ places }: BasePart, ends: readonly PlacedEnd[]): Float64Array {
  const outline = new Float64Array(2 * ends.length);
  ends.forEach(({ place, offset }, e) => {
    const { x, y, alongX, alongY } = places[place]!;
    outline[2 * e] = x + alongX * offset;
    outline[2 * e + 1] = y + alongY * offset;
  });
  return outline;
}
