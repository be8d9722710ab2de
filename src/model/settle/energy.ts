import type { Elements } from './elements.ts';
import { rowLoops } from './loopEnergy.ts';
import { raised } from './raised.ts';

/** Tensions (multipliers) that hold the lengths: per stake segment and per row loop. */
export interface Tensions {
  readonly segment: Float64Array;
  readonly loop: Float64Array;
  /** The held centre lift (one value). */
  readonly lift: Float64Array;
}

/** Unit vectors kept still while one step is searched: they turn with the shape between steps. */
export interface Frames {
  /** The base's upward normal. */
  readonly up: Float64Array;
  /** Set turn vector of each bend of a stake, and of each loop node. */
  readonly natural: Float64Array;
  readonly hold: Float64Array;
}

/** Scratch and results of one evaluation; made once a net and used again. */
export interface Evaluation {
  /** Length residuals, mm: segments, loops and the centre lift. */
  readonly segmentGap: Float64Array;
  readonly loopGap: Float64Array;
  readonly liftGap: Float64Array;
  readonly chord: Float64Array;
  readonly unit: Float64Array;
  readonly turn: Float64Array;
  /** Gradient of each row's length with respect to its nodes' edges (see `loopLengths`). */
  readonly lengthEdge: Float64Array;
  /** Gradient over all nodes, x, y, z. */
  readonly gradient: Float64Array;
}

/** Room for the evaluation of `elements` over `nodeCount` nodes. */
export function evaluation(elements: Elements, nodeCount: number): Evaluation {
  const loops = elements.loop.nodes.length;
  return {
    segmentGap: new Float64Array(elements.segment.rest.length),
    loopGap: new Float64Array(elements.loop.target.length),
    liftGap: new Float64Array(1),
    chord: new Float64Array(loops),
    unit: new Float64Array(3 * loops),
    turn: new Float64Array(3 * loops),
    lengthEdge: new Float64Array(3 * loops),
    gradient: new Float64Array(3 * nodeCount),
  };
}

/**
 * Energy (over Young's modulus) of the shape `x` and its gradient, in `out.gradient`:
 * augmented Lagrangian of the lengths, Σ λ·c + ½·ρ·c², bending of stakes and weavers, springs.
 * With `raise` the tensions are first raised by what the lengths are off, λ ← λ + ρ·c, within the cap.
 */
export function evaluate(
  elements: Elements,
  tensions: Tensions,
  frames: Frames,
  x: Float64Array,
  out: Evaluation,
  raise = false,
): number {
  out.gradient.fill(0);
  return (
    segments(elements, tensions, x, out, raise) +
    springEnergy(elements, x, out.gradient) +
    bends(elements, frames, x, out.gradient) +
    anchorEnergy(elements, x, out.gradient) +
    liftEnergy(elements, tensions, frames, x, out, raise) +
    rowLoops(elements, tensions, frames, x, out, raise)
  );
}

function segments(
  { segment, penalty, tensionCap }: Elements,
  tensions: Tensions,
  x: Float64Array,
  out: Evaluation,
  raise: boolean,
): number {
  const { nodes, rest, weight } = segment;
  const g = out.gradient;
  let energy = 0;
  for (let i = 0; i < rest.length; i++) {
    const a = 3 * nodes[2 * i]!;
    const b = 3 * nodes[2 * i + 1]!;
    const dx = x[b]! - x[a]!;
    const dy = x[b + 1]! - x[a + 1]!;
    const dz = x[b + 2]! - x[a + 2]!;
    const length = Math.sqrt(dx * dx + dy * dy + dz * dz) + 1e-12;
    const gap = length - rest[i]!;
    out.segmentGap[i] = gap;
    if (raise) tensions.segment[i] = raised(tensions.segment[i]!, penalty * gap, tensionCap);
    const w = weight[i]!;
    energy += w * gap * (tensions.segment[i]! + 0.5 * penalty * gap);
    const pull = (w * (tensions.segment[i]! + penalty * gap)) / length;
    g[a] = g[a]! - pull * dx;
    g[a + 1] = g[a + 1]! - pull * dy;
    g[a + 2] = g[a + 2]! - pull * dz;
    g[b] = g[b]! + pull * dx;
    g[b + 1] = g[b + 1]! + pull * dy;
    g[b + 2] = g[b + 2]! + pull * dz;
  }
  return energy;
}

function springEnergy({ spring }: Elements, x: Float64Array, g: Float64Array): number {
  const { nodes, rest, stiffness } = spring;
  let energy = 0;
  for (let i = 0; i < rest.length; i++) {
    const a = 3 * nodes[2 * i]!;
    const b = 3 * nodes[2 * i + 1]!;
    const dx = x[b]! - x[a]!;
    const dy = x[b + 1]! - x[a + 1]!;
    const dz = x[b + 2]! - x[a + 2]!;
    const length = Math.sqrt(dx * dx + dy * dy + dz * dz) + 1e-12;
    const gap = length - rest[i]!;
    energy += 0.5 * stiffness[i]! * gap * gap;
    const pull = (stiffness[i]! * gap) / length;
    g[a] = g[a]! - pull * dx;
    g[a + 1] = g[a + 1]! - pull * dy;
    g[a + 2] = g[a + 2]! - pull * dz;
    g[b] = g[b]! + pull * dx;
    g[b + 1] = g[b + 1]! + pull * dy;
    g[b + 2] = g[b + 2]! + pull * dz;
  }
  return energy;
}

/** Bending of stakes from second differences on uneven spacing, ½·EI/l̄·|d₊/l₊ − d₋/l₋ − set|². */
function bends({ bend }: Elements, { natural }: Frames, x: Float64Array, g: Float64Array): number {
  const { nodes, before, after, stiffness } = bend;
  let energy = 0;
  for (let i = 0; i < before.length; i++) {
    const a = 3 * nodes[3 * i]!;
    const b = 3 * nodes[3 * i + 1]!;
    const c = 3 * nodes[3 * i + 2]!;
    const p = 1 / before[i]!;
    const q = 1 / after[i]!;
    const k = stiffness[i]!;
    for (let d = 0; d < 3; d++) {
      const r = p * x[a + d]! - (p + q) * x[b + d]! + q * x[c + d]! - natural[3 * i + d]!;
      energy += 0.5 * k * r * r;
      const f = k * r;
      g[a + d] = g[a + d]! + p * f;
      g[b + d] = g[b + d]! - (p + q) * f;
      g[c + d] = g[c + d]! + q * f;
    }
  }
  return energy;
}

/** The base's mean place and turn, kept where they started: ½·ρ·(v·(x − start))² for each way v. */
function anchorEnergy({ anchors, penalty }: Elements, x: Float64Array, g: Float64Array): number {
  const { nodes, ways, places } = anchors;
  let energy = 0;
  for (let w = 0; w < ways.length; w++) {
    const way = ways[w]!;
    let off = -places[w]!;
    for (let i = 0; i < nodes.length; i++) {
      const a = 3 * nodes[i]!;
      off += way[3 * i]! * x[a]! + way[3 * i + 1]! * x[a + 1]! + way[3 * i + 2]! * x[a + 2]!;
    }
    energy += 0.5 * penalty * off * off;
    for (let i = 0; i < nodes.length; i++) {
      const a = 3 * nodes[i]!;
      for (let d = 0; d < 3; d++) g[a + d] = g[a + d]! + penalty * off * way[3 * i + d]!;
    }
  }
  return energy;
}

/** The centre lift, held like a length: λ·c + ½·ρ·c², c = Σ w·(n·x) − height. */
function liftEnergy(
  { lift, penalty, tensionCap }: Elements,
  tensions: Tensions,
  { up }: Frames,
  x: Float64Array,
  { liftGap, gradient: g }: Evaluation,
  raise: boolean,
): number {
  if (!lift) return 0;
  const { nodes, weights, height } = lift;
  let gap = -height;
  for (let i = 0; i < nodes.length; i++) {
    const a = 3 * nodes[i]!;
    gap += weights[i]! * (up[0]! * x[a]! + up[1]! * x[a + 1]! + up[2]! * x[a + 2]!);
  }
  liftGap[0] = gap;
  if (raise) tensions.lift[0] = raised(tensions.lift[0]!, penalty * gap, tensionCap);
  const pull = tensions.lift[0]! + penalty * gap;
  for (let i = 0; i < nodes.length; i++) {
    const a = 3 * nodes[i]!;
    const f = pull * weights[i]!;
    g[a] = g[a]! + f * up[0]!;
    g[a + 1] = g[a + 1]! + f * up[1]!;
    g[a + 2] = g[a + 2]! + f * up[2]!;
  }
  return gap * (tensions.lift[0]! + 0.5 * penalty * gap);
}
