/**
 * The rows to come, recomputed from the rows that are woven: back to the plan's aims as gently as the
 * limits allow. What is made smallest is the sum of the squared second differences of the correction,
 * that is of girth less planned girth: the plan keeps its own belly and shoulder, and a basket that is
 * on its plan stays on it.
 */
import { gentlestChanges } from './gentlest.ts';
import type { Place } from './reach.ts';
import { firstMeeting, nearest } from './reach.ts';

/** A tape is read to a millimetre or so: the slope is taken over this many woven rows. */
const slopeRows = 3;

/** The ceiling is this share too high, so that an aim right under it is not lost to rounding. */
const ceilingSlack = 1e-7;

export interface Aims {
  /** The row by which the plan is to be met again. */
  readonly backBy: number;
  /** The belly's row, whose girth is to be the plan's; null where it does not matter. */
  readonly belly: number | null;
  /** Girth of the last row, mm; null for the plan's. */
  readonly rim: number | null;
}

/** An aim, and the nearest to it that can be reached, mm in the middle of the wall. */
export interface Aimed {
  readonly row: number;
  readonly aim: number;
  readonly reached: number;
}

export interface Replan {
  /** Girth by row, mm: 0 … `from` as woven, then as replanned. */
  readonly girths: Float64Array;
  /** The last woven row. */
  readonly from: number;
  /** The row from which on the plan is kept again; null where it is not met before the rim. */
  readonly back: number | null;
  readonly rim: Aimed;
  /** Null where no belly lies ahead or it was not asked for. */
  readonly belly: Aimed | null;
}

/**
 * Replans the rows after the woven ones.
 *
 * @param planned girth by row of the plan, [0] the base girth, mm
 * @param woven girth of the rows woven, 0 … m, mm
 * @param most most change by row, mm (see `mostChanges`); nowhere less than the plan's own
 */
export function replan(
  planned: Float64Array,
  woven: Float64Array,
  most: ArrayLike<number>,
  aims: Aims,
): Replan {
  const last = planned.length - 1;
  const from = Math.min(woven.length - 1, last);
  const girths = Float64Array.from(planned);
  girths.set(woven.subarray(0, from + 1));
  const aim = aims.rim ?? at(planned, last);
  if (from === last) return ended(girths, aim);

  const start = { row: from, girth: at(girths, from) };
  const isPlannedRim = Math.abs(aim - at(planned, last)) < 1e-9;
  const back = isPlannedRim ? firstMeeting(planned, start, aims.backBy, most) : null;
  const end: Place =
    back === null
      ? { row: last, girth: nearest({ row: last, girth: aim }, start, null, most) }
      : { row: back, girth: at(planned, back) };
  const belly = bellyAhead(aims.belly, planned, start, end, most);

  const departure = (row: number) => at(girths, row) - at(planned, row);
  const toward = (row: number, girth: number) => ({
    rows: row - from,
    sum: girth - at(planned, row) - departure(from),
  });
  const slope = Math.min(slopeRows, from);
  const changes = gentlestChanges({
    before: slope === 0 ? 0 : (departure(from) - departure(from - slope)) / slope,
    after: end.row < last ? 0 : null,
    ...bounds(planned, most, from, end.row),
    sums: [
      ...(belly && belly.row < end.row ? [toward(belly.row, belly.reached)] : []),
      toward(end.row, end.girth),
    ],
    ceiling: ceiling(planned, start, end),
  });
  let off = departure(from);
  changes.forEach((change, index) => {
    off += change;
    girths[from + 1 + index] = at(planned, from + 1 + index) + off;
  });
  girths[end.row] = end.girth;
  return {
    girths,
    from,
    back,
    rim: { row: last, aim, reached: at(girths, last) },
    belly: belly && { ...belly, reached: at(girths, belly.row) },
  };
}

/** A basket whose rows are all woven is what it is. */
function ended(girths: Float64Array, aim: number): Replan {
  const from = girths.length - 1;
  const rim = { row: from, aim, reached: at(girths, from) };
  return { girths, from, back: null, rim, belly: null };
}

/** The belly where it lies ahead, with the nearest girth that start and end allow it. */
function bellyAhead(
  row: number | null,
  planned: Float64Array,
  start: Place,
  end: Place,
  most: ArrayLike<number>,
): Aimed | null {
  if (row === null || row <= start.row || row >= planned.length - 1) return null;
  const aim = at(planned, row);
  const reached = row >= end.row ? aim : nearest({ row, girth: aim }, start, end, most);
  return { row, aim, reached };
}

/** What each row's change may be over the plan's own, so that the whole stays within `most`. */
function bounds(planned: Float64Array, most: ArrayLike<number>, from: number, to: number) {
  const own = Float64Array.from(
    { length: to - from },
    (_, i) => at(planned, from + 1 + i) - at(planned, from + i),
  );
  return {
    least: own.map((change, i) => -(most[from + 1 + i] ?? 0) - change),
    most: own.map((change, i) => (most[from + 1 + i] ?? 0) - change),
  };
}

/** No row goes beyond the plan's widest, what is woven already, or where the way has to end. */
function ceiling(planned: Float64Array, start: Place, end: Place): Float64Array {
  const top = Math.max(...planned, start.girth, end.girth) * (1 + ceilingSlack);
  const off = start.girth - at(planned, start.row);
  return Float64Array.from(
    { length: end.row - start.row },
    (_, i) => top - at(planned, start.row + 1 + i) - off,
  );
}

/** Element `i`; every index in this file is inside its array. */
function at(values: ArrayLike<number>, i: number): number {
  return values[i] as number;
}
