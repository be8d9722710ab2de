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
  return {
    forget() {
      seen = 0;
    },
    next(z, f) {
      if (seen > 0) {
        const slot = (seen - 1) % depth;
        const dz = pointSteps[slot]!;
        const df = residualSteps[slot]!;
        for (let i = 0; i < size; i++) {
          dz[i] = z[i]! - lastPoint[i]!;
          df[i] = f[i]! - lastResidual[i]!;
        }
      }
      lastPoint.set(z);
      lastResidual.set(f);
      const used = Math.min(seen, depth);
      seen++;
      const weights = leastSquares(residualSteps, f, used);
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

/** Weights that make Σ weight·column nearest to `f`, from the lightly damped normal equations. */
function leastSquares(
  columns: readonly Float64Array[],
  f: Float64Array,
  used: number,
): Float64Array {
  const gram = Array.from({ length: used }, () => new Float64Array(used + 1));
  for (let i = 0; i < used; i++) {
    for (let j = 0; j <= i; j++) {
      gram[i]![j] = dot(columns[i]!, columns[j]!);
      gram[j]![i] = gram[i]![j]!;
    }
    gram[i]![used] = dot(columns[i]!, f);
  }
  for (let i = 0; i < used; i++) gram[i]![i] = gram[i]![i]! * (1 + 1e-8) + 1e-300;
  for (let i = 0; i < used; i++) {
    const pivot = gram[i]!;
    for (let r = i + 1; r < used; r++) {
      const factor = gram[r]![i]! / pivot[i]!;
      for (let c = i; c <= used; c++) gram[r]![c] = gram[r]![c]! - factor * pivot[c]!;
    }
  }
  const weights = new Float64Array(used);
  for (let i = used - 1; i >= 0; i--) {
    let sum = gram[i]![used]!;
    for (let c = i + 1; c < used; c++) sum -= gram[i]![c]! * weights[c]!;
    weights[i] = sum / gram[i]![i]!;
  }
  return weights;
}

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i]! * b[i]!;
  return sum;
}
