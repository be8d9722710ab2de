import type { Elements } from './elements.ts';
import type { Evaluation, Tensions } from './energy.ts';
import type { Fold } from './fold.ts';
import type { Adder } from './foldedMatrix.ts';
import type { Skyline } from './skyline.ts';

/**
 * Weaver bending ½·k·|b − a − h|², a and b the unit chords before and after the node, h the set turn: with
 * edges e₁, e₂ of lengths c₁, c₂ and P = 1 − t·tᵀ, k·Pₐ/c₁², −k·Pₐ·P_b/c₁c₂ and k·P_b/c₂².
 */
export function addTurns({ loop }: Elements, { chord, unit }: Evaluation, add: Adder): void {
  const H11 = new Float64Array(9);
  const H12 = new Float64Array(9);
  const H22 = new Float64Array(9);
  const K = new Float64Array(9);
  for (let r = 0; r + 1 < loop.first.length; r++) {
    const from = loop.first[r]!;
    const to = loop.first[r + 1]!;
    for (let j = from; j < to; j++) {
      const k = loop.turnWeight[j]! * loop.stiffness[j]!;
      if (k === 0) continue;
      const before = j > from ? j - 1 : to - 1;
      const after = j + 1 < to ? j + 1 : from;
      const c1 = chord[before]!;
      const c2 = chord[j]!;
      projection(unit, before, k / (c1 * c1), H11);
      projection(unit, j, k / (c2 * c2), H22);
      crossBlock(unit, before, j, -k / (c1 * c2), H12);
      const A = loop.nodes[before]!;
      const B = loop.nodes[j]!;
      const C = loop.nodes[after]!;
      add.block(A, A, H11);
      add.block(C, C, H22);
      for (let i = 0; i < 9; i++) K[i] = H12[i]! - H11[i]!;
      add.block(A, B, K);
      for (let i = 0; i < 9; i++) K[i] = H12[i]! - H22[i]!;
      add.block(B, C, K);
      for (let i = 0; i < 9; i++) K[i] = -H12[i]!;
      add.block(A, C, K);
      for (let i = 0; i < 9; i++) {
        K[i] = H11[i]! + H22[i]! - H12[i]! - H12[3 * (i % 3) + ((i / 3) | 0)]!;
      }
      add.block(B, B, K);
    }
  }
}

/** s·Pₐ·P_b = s·(1 − a·aᵀ − b·bᵀ + (a·b)·a·bᵀ) of the unit chords i and j. */
function crossBlock(unit: Float64Array, i: number, j: number, s: number, to: Float64Array): void {
  const dot =
    unit[3 * i]! * unit[3 * j]! +
    unit[3 * i + 1]! * unit[3 * j + 1]! +
    unit[3 * i + 2]! * unit[3 * j + 2]!;
  for (let r = 0; r < 3; r++) {
    const ar = unit[3 * i + r]!;
    const br = unit[3 * j + r]!;
    for (let c = 0; c < 3; c++) {
      const own = (r === c ? 1 : 0) - ar * unit[3 * i + c]! - br * unit[3 * j + c]!;
      to[3 * r + c] = s * (own + dot * ar * unit[3 * j + c]!);
    }
  }
}

/** Girths: tension across each segment, and ρ·v·vᵀ with v the gradient of the loop's length. */
export function addLoops(
  { loop, penalty }: Elements,
  tensions: Tensions,
  folded: Fold,
  { chord, unit, lengthEdge }: Evaluation,
  add: Adder,
  matrix: Skyline,
): void {
  const K = new Float64Array(9);
  for (let r = 0; r + 1 < loop.first.length; r++) {
    const from = loop.first[r]!;
    const to = loop.first[r + 1]!;
    const pull = tensions.loop[r]!;
    let low = folded.leads.length;
    let high = 0;
    for (let j = from; j < to; j++) {
      const lead = folded.lead[loop.nodes[j]!]!;
      low = Math.min(low, lead);
      high = Math.max(high, lead);
    }
    const v = new Float64Array(3 * (high - low + 1));
    for (let j = from; j < to; j++) {
      const next = j + 1 < to ? j + 1 : from;
      for (const [node, sign] of [
        [loop.nodes[j]!, -1],
        [loop.nodes[next]!, 1],
      ] as const) {
        const at = 3 * (folded.lead[node]! - low);
        v[at] = v[at]! + sign * folded.signX[node]! * lengthEdge[3 * j]!;
        v[at + 1] = v[at + 1]! + sign * folded.signY[node]! * lengthEdge[3 * j + 1]!;
        v[at + 2] = v[at + 2]! + sign * lengthEdge[3 * j + 2]!;
      }
      const w = loop.segmentWeight[j]!;
      if (w > 0 && pull > 0) {
        projection(unit, j, (w * pull) / chord[j]!, K);
        add.both(loop.nodes[j]!, loop.nodes[next]!, K);
      }
    }
    addUpright(loop, r, folded, low, v.length, matrix);
    for (let i = 0; i < v.length; i++) {
      const row = matrix.start[3 * low + i]! + 3 * low;
      const scaled = penalty * v[i]!;
      for (let k = 0; k <= i; k++)
        matrix.values[row + k] = matrix.values[row + k]! + scaled * v[k]!;
    }
  }
}

/** Row r's middle kept over the base's: k·m·mᵀ along x and y, m the mean over the row's nodes. */
function addUpright(
  { first, nodes, upright }: Elements['loop'],
  r: number,
  { lead, signX, signY }: Fold,
  low: number,
  size: number,
  matrix: Skyline,
): void {
  const mean = new Float64Array(size);
  const n = first[r + 1]! - first[r]!;
  for (let j = first[r]!; j < first[r + 1]!; j++) {
    const node = nodes[j]!;
    const at = 3 * (lead[node]! - low);
    mean[at] = mean[at]! + signX[node]! / n;
    mean[at + 1] = mean[at + 1]! + signY[node]! / n;
  }
  for (let i = 0; i < size; i++) {
    const row = matrix.start[3 * low + i]! + 3 * low;
    const scaled = upright[r]! * mean[i]!;
    for (let k = i % 3; k <= i; k += 3) {
      matrix.values[row + k] = matrix.values[row + k]! + scaled * mean[k]!;
    }
  }
}

/** s·(1 − t·tᵀ) of unit vector `j`. */
function projection(unit: Float64Array, j: number, s: number, to: Float64Array): void {
  const x = unit[3 * j]!;
  const y = unit[3 * j + 1]!;
  const z = unit[3 * j + 2]!;
  to[0] = s * (1 - x * x);
  to[1] = -s * x * y;
  to[2] = -s * x * z;
  to[3] = to[1]!;
  to[4] = s * (1 - y * y);
  to[5] = -s * y * z;
  to[6] = to[2]!;
  to[7] = to[5]!;
  to[8] = s * (1 - z * z);
}
