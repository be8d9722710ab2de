import type { Fold } from './fold.ts';
import type { Skyline } from './skyline.ts';

export type Adder = ReturnType<typeof adder>;

/** Ways to add the coupling of two nodes to the folded matrix. */
export function adder({ lead, signX, signY }: Fold, { start, values }: Skyline) {
  const K = new Float64Array(9);

  /** Adds `k` (row-major 3 × 3) for nodes (i, j), and its transpose for (j, i). */
  function block(i: number, j: number, k: Float64Array): void {
    const I = 3 * lead[i]!;
    const J = 3 * lead[j]!;
    const xi = signX[i]!;
    const yi = signY[i]!;
    const xj = signX[j]!;
    const yj = signY[j]!;
    const k00 = k[0]! * xi * xj;
    const k01 = k[1]! * xi * yj;
    const k02 = k[2]! * xi;
    const k10 = k[3]! * yi * xj;
    const k11 = k[4]! * yi * yj;
    const k12 = k[5]! * yi;
    const k20 = k[6]! * xj;
    const k21 = k[7]! * yj;
    const k22 = k[8]!;
    if (I > J) {
      const r0 = start[I]! + J;
      const r1 = start[I + 1]! + J;
      const r2 = start[I + 2]! + J;
      values[r0] = values[r0]! + k00;
      values[r0 + 1] = values[r0 + 1]! + k01;
      values[r0 + 2] = values[r0 + 2]! + k02;
      values[r1] = values[r1]! + k10;
      values[r1 + 1] = values[r1 + 1]! + k11;
      values[r1 + 2] = values[r1 + 2]! + k12;
      values[r2] = values[r2]! + k20;
      values[r2 + 1] = values[r2 + 1]! + k21;
      values[r2 + 2] = values[r2 + 2]! + k22;
    } else if (I < J) {
      const r0 = start[J]! + I;
      const r1 = start[J + 1]! + I;
      const r2 = start[J + 2]! + I;
      values[r0] = values[r0]! + k00;
      values[r0 + 1] = values[r0 + 1]! + k10;
      values[r0 + 2] = values[r0 + 2]! + k20;
      values[r1] = values[r1]! + k01;
      values[r1 + 1] = values[r1 + 1]! + k11;
      values[r1 + 2] = values[r1 + 2]! + k21;
      values[r2] = values[r2]! + k02;
      values[r2 + 1] = values[r2 + 1]! + k12;
      values[r2 + 2] = values[r2 + 2]! + k22;
    } else {
      // Images of one node: both orders land on its own tile (once for the node itself).
      const twice = i === j ? 1 : 2;
      const r0 = start[I]! + I;
      const r1 = start[I + 1]! + I;
      const r2 = start[I + 2]! + I;
      const half = 0.5 * twice;
      values[r0] = values[r0]! + twice * k00;
      values[r1] = values[r1]! + half * (k10 + k01);
      values[r1 + 1] = values[r1 + 1]! + twice * k11;
      values[r2] = values[r2]! + half * (k20 + k02);
      values[r2 + 1] = values[r2 + 1]! + half * (k21 + k12);
      values[r2 + 2] = values[r2 + 2]! + twice * k22;
    }
  }

  /** A bar's K on both nodes and −K between them. */
  function both(a: number, b: number, k: Float64Array): void {
    block(a, a, k);
    block(b, b, k);
    for (let i = 0; i < 9; i++) k[i] = -k[i]!;
    block(a, b, k);
  }

  return {
    block,
    both,
    /** `s` times the unit matrix for nodes (i, j) and (j, i). */
    even(i: number, j: number, s: number): void {
      let I = 3 * lead[i]!;
      let J = 3 * lead[j]!;
      if (I < J) [I, J] = [J, I];
      const k = I === J && i !== j ? 2 * s : s;
      const r0 = start[I]! + J;
      const r1 = start[I + 1]! + J + 1;
      const r2 = start[I + 2]! + J + 2;
      values[r0] = values[r0]! + k * signX[i]! * signX[j]!;
      values[r1] = values[r1]! + k * signY[i]! * signY[j]!;
      values[r2] = values[r2]! + k;
    },
    /** A bar of axial stiffness `stiff` under `tension`; pushed bars add nothing sideways. */
    bar(x: Float64Array, a: number, b: number, stiff: number, tension: number): void {
      const dx = x[3 * b]! - x[3 * a]!;
      const dy = x[3 * b + 1]! - x[3 * a + 1]!;
      const dz = x[3 * b + 2]! - x[3 * a + 2]!;
      const square = dx * dx + dy * dy + dz * dz + 1e-24;
      const side = tension > 0 ? tension / Math.sqrt(square) : 0;
      const axial = (stiff - side) / square;
      K[0] = side + axial * dx * dx;
      K[1] = axial * dx * dy;
      K[2] = axial * dx * dz;
      K[3] = K[1];
      K[4] = side + axial * dy * dy;
      K[5] = axial * dy * dz;
      K[6] = K[2];
      K[7] = K[5];
      K[8] = side + axial * dz * dz;
      both(a, b, K);
    },
  };
}
