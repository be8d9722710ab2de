import type { Elements } from './elements.ts';
import type { Evaluation, Frames, Tensions } from './energy.ts';
import type { Fold } from './fold.ts';
import type { Adder } from './foldedMatrix.ts';
import { adder } from './foldedMatrix.ts';
import { addLoops, addTurns } from './loopStiffness.ts';
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

function length(x: Float64Array, a: number, b: number): number {
  return Math.sqrt(
    (x[3 * b]! - x[3 * a]!) ** 2 +
      (x[3 * b + 1]! - x[3 * a + 1]!) ** 2 +
      (x[3 * b + 2]! - x[3 * a + 2]!) ** 2,
  );
}
