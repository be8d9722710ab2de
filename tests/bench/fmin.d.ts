/** What fmin, which brings no types, puts in the global scope when it is loaded as a module. */
declare const fmin: {
  /**
   * Non-linear conjugate gradients (Polak–Ribière) with a Wolfe line search. `f` returns the value at
   * `x` and writes the gradient to `gradient`; the least point found is `x`, its value `fx`.
   */
  conjugateGradient(
    f: (x: readonly number[], gradient: number[]) => number,
    initial: readonly number[],
    options?: { readonly maxIterations?: number },
  ): { readonly x: readonly number[]; readonly fx: number; readonly fxprime: readonly number[] };
};
