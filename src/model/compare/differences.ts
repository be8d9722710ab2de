/**
 * Two settled baskets read side by side, place by place. A difference is always the second basket
 * less the first, so that + says that the second is larger. Lengths mm; NaN where one has no row.
 */
import type { Unit } from '../../plan/schema.ts';
import type { Basket } from '../basket.ts';
import { heightSteps, profile, readAt } from './heights.ts';

/** Rows against rows of the same number, or heights over the table against the same heights. */
export type ComparedBy = 'row' | 'height';

/** The part of a basket that is compared here. */
export type Compared = Pick<Basket, 'rows' | 'summary'>;

export interface PlaceDifference {
  /** Row number, or the height's number from the lowest, from 1. */
  readonly place: number;
  /** Height over the table at the mid-sides; by row it is that of neither, so NaN. */
  readonly height: number;
  /** The row of each basket, the nearest one where heights are compared; null where there is none. */
  readonly rowA: number | null;
  readonly rowB: number | null;
  /** Tape girth of each. */
  readonly a: number;
  readonly b: number;
  readonly difference: number;
  /** Girth of one stake gap of the second less that of the first: with equal ends difference over ends. */
  readonly perGap: number;
}

export interface Differences {
  readonly by: ComparedBy;
  /** From the base up. */
  readonly places: readonly PlaceDifference[];
  /** Where they differ most; null where nothing differs that a tape would show. */
  readonly most: PlaceDifference | null;
  /** Tape girths of the places that both have, added up, and how many those are. */
  readonly total: {
    readonly places: number;
    readonly a: number;
    readonly b: number;
    readonly difference: number;
  };
}

/** Less than this nobody reads off a tape, mm. */
const leastShown = 0.05;

/** The baskets compared by row or by height; heights go in steps that are round in `unit`. */
export function differences(a: Compared, b: Compared, by: ComparedBy, unit: Unit): Differences {
  const places = by === 'row' ? byRow(a, b) : byHeight(a, b, unit);
  const shared = places.filter(({ difference }) => Number.isFinite(difference));
  const most = shared.reduce<PlaceDifference | null>(
    (far, one) => (Math.abs(one.difference) > Math.abs(far?.difference ?? 0) ? one : far),
    null,
  );
  const sumA = shared.reduce((sum, place) => sum + place.a, 0);
  const sumB = shared.reduce((sum, place) => sum + place.b, 0);
  return {
    by,
    places,
    most: most && Math.abs(most.difference) >= leastShown ? most : null,
    total: { places: shared.length, a: sumA, b: sumB, difference: sumB - sumA },
  };
}

function byRow(a: Compared, b: Compared): PlaceDifference[] {
  const count = Math.max(a.rows.length, b.rows.length);
  return Array.from({ length: count }, (_, index) => {
    const [one, other] = [a.rows[index], b.rows[index]];
    return placed(a, b, {
      place: index + 1,
      height: Number.NaN,
      rowA: one?.row ?? null,
      rowB: other?.row ?? null,
      a: one?.tapeGirth ?? Number.NaN,
      b: other?.tapeGirth ?? Number.NaN,
    });
  });
}

function byHeight(a: Compared, b: Compared, unit: Unit): PlaceDifference[] {
  const [one, other] = [profile(a.rows), profile(b.rows)];
  return heightSteps([one, other], unit).map((height, index) => {
    const [here, there] = [readAt(one, height), readAt(other, height)];
    return placed(a, b, {
      place: index + 1,
      height,
      rowA: here?.row ?? null,
      rowB: there?.row ?? null,
      a: here?.tapeGirth ?? Number.NaN,
      b: there?.tapeGirth ?? Number.NaN,
    });
  });
}

function placed(
  { summary: one }: Compared,
  { summary: other }: Compared,
  read: Omit<PlaceDifference, 'difference' | 'perGap'>,
): PlaceDifference {
  return {
    ...read,
    difference: read.b - read.a,
    perGap: read.b / other.ends - read.a / one.ends,
  };
}
