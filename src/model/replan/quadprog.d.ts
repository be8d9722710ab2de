/** The part of quadprog that is used. Its arrays count from 1, as those of its Fortran source do. */
declare module 'quadprog' {
  type Vector = (number | undefined)[];
  interface Result {
    /** The minimum, from index 1. */
    readonly solution: readonly (number | undefined)[];
    /** Empty when the problem was solved. */
    readonly message: string;
  }
  /**
   * Minimum of ½·xᵀDx − dᵀx subject to aᵢᵀx ≥ bᵢ, the first `equalities` of them as equations; `a` has a
   * row for each unknown and a column for each constraint. Overwrites `D` and `d`.
   */
  export function solveQP(
    D: (Vector | undefined)[],
    d: Vector,
    a: (Vector | undefined)[],
    b: Vector,
    equalities: number,
  ): Result;
}
