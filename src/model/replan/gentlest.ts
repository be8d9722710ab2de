/**
 * The gentlest way from one girth to another: a small convex quadratic program, solved by the dual
 * method of D. Goldfarb & A. Idnani, "A numerically stable dual method for solving strictly convex
 * quadratic programs", Mathematical Programming 27 (1983) 1–33, as the quadprog library has it.
 *
 * The unknowns are the changes from row to row, not the girths: the limits then are plain bounds, and
 * the problem is as well conditioned as a string of n springs (n²) instead of a beam (n⁴).
 */
import { solveQP } from 'quadprog';

export interface Way {
  /** Change of the row before the first, mm: the way takes it up smoothly. */
  readonly before: number;
  /** Change of the row after the last, mm; null where nothing follows. */
  readonly after: number | null;
  /** Least and most change of each row, mm. */
  readonly least: ArrayLike<number>;
  readonly most: ArrayLike<number>;
  /** What the first `rows` changes have to add up to, mm. */
  readonly sums: readonly { readonly rows: number; readonly sum: number }[];
  /** What the first k + 1 changes may add up to at most, mm; left out, anything. */
  readonly ceiling?: ArrayLike<number> | null;
}

/**
 * The changes of rows 1 … n (index 0 … n − 1), mm, that keep the bounds and sums with the smallest sum of
 * squared differences between neighbours, the rows before and after included. Throws where bounds and
 * sums contradict one another.
 */
export function gentlestChanges(way: Way): Float64Array {
  const n = way.least.length;
  const result = new Float64Array(n);
  if (n === 0) return result;
  const constraints = constraintsOf(way, n);
  const { solution, message } = solveQP(
    springs(n, way.after !== null),
    pulls(n, way),
    // Column by column: constraint j has a[i][j] for unknown i.
    fromOne(n, (i) => fromOne(constraints.length, (j) => constraints[j - 1]?.weight(i) ?? 0)),
    fromOne(constraints.length, (j) => constraints[j - 1]?.bound ?? 0),
    way.sums.length,
  );
  if (message) throw new RangeError(`no way keeps its limits and comes to its aims: ${message}`);
  for (let k = 0; k < n; k++) {
    // Only rounding is taken off here.
    const change = solution[k + 1] ?? 0;
    result[k] = Math.min(Math.max(change, way.least[k] ?? change), way.most[k] ?? change);
  }
  return result;
}

interface Constraint {
  /** Weight of unknown `i`, from 1. */
  readonly weight: (i: number) => number;
  readonly bound: number;
}

/** The sums first (they are equations), then bounds and ceiling, all as weights · x ≥ bound. */
function constraintsOf({ least, most, sums, ceiling }: Way, n: number): Constraint[] {
  const list: Constraint[] = sums.map(({ rows, sum }) => ({
    weight: (i) => (i <= rows ? 1 : 0),
    bound: sum,
  }));
  for (let k = 1; k <= n; k++) {
    list.push({ weight: (i) => (i === k ? 1 : 0), bound: least[k - 1] ?? 0 });
    list.push({ weight: (i) => (i === k ? -1 : 0), bound: -(most[k - 1] ?? 0) });
    const top = ceiling?.[k - 1];
    if (top !== undefined) list.push({ weight: (i) => (i <= k ? -1 : 0), bound: -top });
  }
  return list;
}

/** Twice the sum of squared differences of neighbours, as a matrix. */
function springs(n: number, isHeldAbove: boolean) {
  return fromOne(n, (i) =>
    fromOne(n, (j) => {
      if (i === j) return i < n || isHeldAbove ? 4 : 2;
      return Math.abs(i - j) === 1 ? -2 : 0;
    }),
  );
}

function pulls(n: number, { before, after }: Way): (number | undefined)[] {
  return fromOne(n, (i) => (i === 1 ? 2 * before : 0) + (i === n ? 2 * (after ?? 0) : 0));
}

/** A list that counts from 1. */
function fromOne<T>(count: number, make: (index: number) => T): (T | undefined)[] {
  return Array.from({ length: count + 1 }, (_, index) => (index === 0 ? undefined : make(index)));
}
