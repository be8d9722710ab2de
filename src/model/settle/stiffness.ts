import type { Elements } from './elements.ts';
import type { Evaluation, Frames, Tensions } from './energy.ts';
import type { Fold } from './fold.ts';
import type { Skyline } from './skyline.ts';
import { skyline } from './skyline.ts';

/** An empty stiffness matrix over the leads, with room for every pair of nodes an element couples. */
export function stiffness(
  { segment, spring, bend, loop, lift, anchors }: Elements,
  folded: Fold,
): Skyline {
  const first = Int32Array.from(folded.leads, (_, lead) => lead);
  const couple = (nodes: Int32Array, from: number, to: number) => {
    let least = folded.leads.length;
    for (let i = from; i < to; i++) least = Math.min(least, folded.lead[nodes[i]!]!);
    for (let i = from; i < to; i++) {
      const lead = folded.lead[nodes[i]!]!;
      first[lead] = Math.min(first[lead]!, least);
    }
  };
  for (let i = 0; i < segment.nodes.length; i += 2) couple(segment.nodes, i, i + 2);
  for (let i = 0; i < spring.nodes.length; i += 2) couple(spring.nodes, i, i + 2);
  couple(anchors.nodes, 0, anchors.nodes.length);
  if (lift) couple(lift.nodes, 0, lift.nodes.length);
  for (let i = 0; i < bend.nodes.length; i += 3) couple(bend.nodes, i, i + 3);
  for (let r = 0; r + 1 < loop.first.length; r++) {
    couple(loop.nodes, loop.first[r]!, loop.first[r + 1]!);
  }
  return skyline(first);
}

/**
 * Fills `matrix` with the positive part of the energy's Hessian at the shape last evaluated: every
 * term's Gauss–Newton part, and of the terms that turn with the tension only those in tension. (The
 * full Hessian is indefinite on the way and was measured slower; shared reference, section 3.3.)
 * `damping` is added to the diagonal.
 */
export function assemble(
  elements: Elements,
  tensions: Tensions,
  folded: Fold,
  frames: Frames,
  x: Float64Array,
  out: Evaluation,
  damping: number,
  matrix: Skyline,
): void {
  matrix.values.fill(0);
  const add = adder(folded, matrix);
  const { segment, spring, penalty } = elements;
  for (let i = 0; i < segment.rest.length; i++) {
    const [a, b, w] = [segment.nodes[2 * i]!, segment.nodes[2 * i + 1]!, segment.weight[i]!];
    const tension = tensions.segment[i]!;
    add.bar(x, a, b, w * penalty, w * tension);
  }
  for (let i = 0; i < spring.rest.length; i++) {
    const [a, b, k] = [spring.nodes[2 * i]!, spring.nodes[2 * i + 1]!, spring.stiffness[i]!];
    add.bar(x, a, b, k, k * (length(x, a, b) - spring.rest[i]!));
  }
  addBends(elements, add);
  addLift(elements, frames.up, add);
  addTurns(elements, out, add);
  addLoops(elements, tensions, folded, out, add, matrix);
  addAnchors(elements, folded, matrix);
  for (const lead of folded.fixed) {
    for (let d = 3 * lead; d < 3 * lead + 3; d++) {
      const at = matrix.start[d]! + d;
      matrix.values[at] = matrix.values[at]! + 1e9 * penalty;
    }
  }
  for (let lead = 0; lead < folded.leads.length; lead++) {
    const node = folded.leads[lead]!;
    const held = [folded.signX[node] === 0, folded.signY[node] === 0, false];
    for (let d = 0; d < 3; d++) {
      const at = matrix.start[3 * lead + d]! + 3 * lead + d;
      matrix.values[at] = matrix.values[at]! + damping + (held[d] ? penalty : 0);
    }
  }
}

type Adder = ReturnType<typeof adder>;

function addBends({ bend }: Elements, add: Adder): void {
  for (let i = 0; i < bend.before.length; i++) {
    const a = bend.nodes[3 * i]!;
    const b = bend.nodes[3 * i + 1]!;
    const c = bend.nodes[3 * i + 2]!;
    const p = 1 / bend.before[i]!;
    const q = 1 / bend.after[i]!;
    const k = bend.stiffness[i]!;
    add.even(a, a, k * p * p);
    add.even(b, b, k * (p + q) * (p + q));
    add.even(c, c, k * q * q);
    add.even(a, b, -k * p * (p + q));
    add.even(b, c, -k * q * (p + q));
    add.even(a, c, k * p * q);
  }
}

/**
 * Keeps the base from shifting and turning as a whole: ρ·v·vᵀ for the three mean shifts and the three mean
 * turns of the anchors. The energy does not depend on them, so this holds nothing that has a force.
 */
function addAnchors({ anchors, penalty }: Elements, folded: Fold, matrix: Skyline): void {
  const { nodes, ways } = anchors;
  const leads = [...new Set(Array.from(nodes, (node) => folded.lead[node]!))].sort((p, q) => p - q);
  const place = new Map(leads.map((lead, index) => [lead, index]));
  for (const way of ways) {
    const v = new Float64Array(3 * leads.length);
    nodes.forEach((node, i) => {
      const at = 3 * place.get(folded.lead[node]!)!;
      v[at] = v[at]! + folded.signX[node]! * way[3 * i]!;
      v[at + 1] = v[at + 1]! + folded.signY[node]! * way[3 * i + 1]!;
      v[at + 2] = v[at + 2]! + way[3 * i + 2]!;
    });
    for (let i = 0; i < v.length; i++) {
      const row = 3 * leads[(i / 3) | 0]! + (i % 3);
      for (let k = 0; k <= i; k++) {
        const at = matrix.start[row]! + 3 * leads[(k / 3) | 0]! + (k % 3);
        matrix.values[at] = matrix.values[at]! + penalty * v[i]! * v[k]!;
      }
    }
  }
}

/** The centre lift: ρ·w·wᵀ along the base's normal. */
function addLift({ lift, penalty }: Elements, up: Float64Array, add: Adder): void {
  if (!lift) return;
  const K = new Float64Array(9);
  for (let i = 0; i < lift.nodes.length; i++) {
    for (let j = 0; j <= i; j++) {
      const w = penalty * lift.weights[i]! * lift.weights[j]!;
      for (let r = 0; r < 3; r++) for (let c = 0; c < 3; c++) K[3 * r + c] = w * up[r]! * up[c]!;
      add.block(lift.nodes[i]!, lift.nodes[j]!, K);
    }
  }
}

/**
 * Weaver bending ½·k·|b − a − h|², a and b the unit chords before and after the node, h the set turn: with
 * edges e₁, e₂ of lengths c₁, c₂ and P = 1 − t·tᵀ, k·Pₐ/c₁², −k·Pₐ·P_b/c₁c₂ and k·P_b/c₂².
 */
function addTurns({ loop }: Elements, { chord, unit }: Evaluation, add: Adder): void {
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
function addLoops(
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

/** Ways to add the coupling of two nodes to the folded matrix. */
function adder({ lead, signX, signY }: Fold, { start, values }: Skyline) {
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

function length(x: Float64Array, a: number, b: number): number {
  return Math.sqrt(
    (x[3 * b]! - x[3 * a]!) ** 2 +
      (x[3 * b + 1]! - x[3 * a + 1]!) ** 2 +
      (x[3 * b + 2]! - x[3 * a + 2]!) ** 2,
  );
}
