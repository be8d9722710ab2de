/**
 * Anderson's acceleration of a fixed-point iteration z → z + f(z) (D. G. Anderson, J. ACM 12, 1965): the
 * next point is the combination of the last few whose residuals cancel best. It mends what a kept
 * factor and the left-out part of the Hessian cost, for a few dot products a step.
 */
export interface Anderson {
  /** Forgets what was seen; call after a jump. */
  readonly forget: () => void;
  /** Turns `z` (point) into the next point, given its residual `f`; both of the length agreed. */
  readonly next: (z: Float64Array, f: Float64Array) => void;
}

/** Acceleration over the last `depth` steps for points of `size` numbers. */
export function anderson(size: number, depth: number): Anderson {
  const pointSteps = Array.from({ length: depth }, () => new Float64Array(size));
  const residualSteps = Array.from({ length: depth }, () => new Float64Array(size));
  const lastPoint = new Float64Array(size);
  const lastResidual = new Float64Array(size);
  let seen = 0;
  /** Inner products of the residual steps; a new step changes one row and column. */
  const gram = new Float64Array(depth * depth);
  const right = new Float64Array(depth);
  return {
    forget() {
      seen = 0;
    },
    next(z, f) {
      const used = Math.min(seen, depth);
      if (seen > 0) {
        const slot = (seen - 1) % depth;
        const dz = pointSteps[slot]!;
        const df = residualSteps[slot]!;
        for (let i = 0; i < size; i++) {
          dz[i] = z[i]! - lastPoint[i]!;
          df[i] = f[i]! - lastResidual[i]!;
        }
        for (let k = 0; k < used; k++) {
          const product = dot(df, residualSteps[k]!);
          gram[slot * depth + k] = product;
          gram[k * depth + slot] = product;
        }
      }
      lastPoint.set(z);
      lastResidual.set(f);
      seen++;
      for (let k = 0; k < used; k++) right[k] = dot(residualSteps[k]!, f);
      const weights = leastSquares(gram, right, used, depth);
      for (let i = 0; i < size; i++) z[i] = z[i]! + f[i]!;
      for (let k = 0; k < used; k++) {
        const weight = weights[k]!;
        const dz = pointSteps[k]!;
        const df = residualSteps[k]!;
        for (let i = 0; i < size; i++) z[i] = z[i]! - weight * (dz[i]! + df[i]!);
      }
    },
  };
}

/**
 * Weights that make Σ weight·column nearest to a vector, from the lightly damped normal equations: `gram` holds
 * the columns' inner products in rows of `depth`, `right` those with the vector; the first `used` count.
 */
function leastSquares(
  gram: Float64Array,
  right: Float64Array,
  used: number,
  depth: number,
): Float64Array {
  const rows = Array.from({ length: used }, (_, i) => {
    const row = new Float64Array(used + 1);
    for (let c = 0; c < used; c++) row[c] = gram[i * depth + c]!;
    row[i] = row[i]! * (1 + 1e-8) + 1e-300;
    row[used] = right[i]!;
    return row;
  });
  for (let i = 0; i < used; i++) {
    const pivot = rows[i]!;
    for (let r = i + 1; r < used; r++) {
      const factor = rows[r]![i]! / pivot[i]!;
      for (let c = i; c <= used; c++) rows[r]![c] = rows[r]![c]! - factor * pivot[c]!;
    }
  }
  const weights = new Float64Array(used);
  for (let i = used - 1; i >= 0; i--) {
    let sum = rows[i]![used]!;
    for (let c = i + 1; c < used; c++) sum -= rows[i]![c]! * weights[c]!;
    weights[i] = sum / rows[i]![i]!;
  }
  return weights;
}

/** Σ a·b, in four sums so that no addition waits for the one before. */
function dot(a: Float64Array, b: Float64Array): number {
  let s0 = 0;
  let s1 = 0;
  let s2 = 0;
  let s3 = 0;
  let i = 0;
  for (; i + 3 < a.length; i += 4) {
    s0 += a[i]! * b[i]!;
    s1 += a[i + 1]! * b[i + 1]!;
    s2 += a[i + 2]! * b[i + 2]!;
    s3 += a[i + 3]! * b[i + 3]!;
  }
  for (; i < a.length; i++) s0 += a[i]! * b[i]!;
  return s0 + s1 + (s2 + s3);
}
