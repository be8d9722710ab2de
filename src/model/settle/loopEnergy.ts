import { excess } from '../net/smoothLength.ts';
import type { Elements } from './elements.ts';
import type { Evaluation, Frames, Tensions } from './energy.ts';
import { raised } from './raised.ts';

/**
 * Rows: length of the smooth loop (see net/smoothLength) held at its target, and bending of the
 * weaver from the turn Δ between unit chords, ½·B/l̄·|Δ − hold|².
 *
 * With D = ∂/∂Δ at each node the gradient with respect to edge e_j is t_j·(∂/∂c_j) + P_j(D_j − D_{j+1})/c_j,
 * P = 1 − t·tᵀ; node j takes it with a minus sign and node j + 1 with a plus.
 */
export function rowLoops(
  elements: Elements,
  tensions: Tensions,
  frames: Frames,
  x: Float64Array,
  out: Evaluation,
  raise: boolean,
): number {
  const { loop, penalty, tensionCap } = elements;
  const { first, nodes, target, segmentWeight, turnWeight, stiffness, shareA, shareB } = loop;
  const { turn, lengthEdge, gradient: g } = out;
  const { hold } = frames;
  let energy = 0;
  for (let r = 0; r < target.length; r++) {
    const from = first[r]!;
    const to = first[r + 1]!;
    chords(nodes, from, to, x, out);
    // Gradient of the row's length with respect to the turns, gathered in lengthEdge for a while.
    let length = 0;
    for (let j = from; j < to; j++) {
      lengthEdge[3 * j] = 0;
      lengthEdge[3 * j + 1] = 0;
      lengthEdge[3 * j + 2] = 0;
    }
    for (let j = from; j < to; j++) {
      const w = segmentWeight[j]!;
      if (w === 0) continue;
      const next = j + 1 < to ? j + 1 : from;
      length += w * segmentLength(j, next, w, shareA[j]!, shareB[j]!, out);
    }
    const gap = length - target[r]!;
    out.loopGap[r] = gap;
    if (raise && r < loop.strict)
      tensions.loop[r] = raised(tensions.loop[r]!, penalty * gap, tensionCap);
    energy += gap * (tensions.loop[r]! + 0.5 * penalty * gap);
    const pull = tensions.loop[r]! + penalty * gap;
    for (let j = from; j < to; j++) {
      if (turnWeight[j] === 0) continue;
      const k = turnWeight[j]! * stiffness[j]!;
      for (let d = 3 * j; d < 3 * j + 3; d++) energy += 0.5 * k * (turn[d]! - hold[d]!) ** 2;
    }
    energy += uprightEnergy(loop, r, x, g);
    edgeGradients(loop, frames, from, to, pull, out, g);
  }
  return energy;
}

/** A row's middle is kept over the base's, ½·k·(mean x² + mean y²): see `uprightShare` in elements. */
function uprightEnergy(
  { first, nodes, upright }: Elements['loop'],
  r: number,
  x: Float64Array,
  g: Float64Array,
): number {
  const from = first[r]!;
  const to = first[r + 1]!;
  const n = to - from;
  let mx = 0;
  let my = 0;
  for (let j = from; j < to; j++) {
    mx += x[3 * nodes[j]!]! / n;
    my += x[3 * nodes[j]! + 1]! / n;
  }
  const k = upright[r]!;
  for (let j = from; j < to; j++) {
    const a = 3 * nodes[j]!;
    g[a] = g[a]! + (k * mx) / n;
    g[a + 1] = g[a + 1]! + (k * my) / n;
  }
  return 0.5 * k * (mx * mx + my * my);
}

/** Chords, unit chords and turns of one loop. */
function chords(
  nodes: Int32Array,
  from: number,
  to: number,
  x: Float64Array,
  { chord, unit, turn }: Evaluation,
): void {
  for (let j = from; j < to; j++) {
    const a = 3 * nodes[j]!;
    const b = 3 * nodes[j + 1 < to ? j + 1 : from]!;
    const dx = x[b]! - x[a]!;
    const dy = x[b + 1]! - x[a + 1]!;
    const dz = x[b + 2]! - x[a + 2]!;
    const c = Math.sqrt(dx * dx + dy * dy + dz * dz) + 1e-9;
    chord[j] = c;
    unit[3 * j] = dx / c;
    unit[3 * j + 1] = dy / c;
    unit[3 * j + 2] = dz / c;
  }
  for (let j = from; j < to; j++) {
    const before = j > from ? j - 1 : to - 1;
    turn[3 * j] = unit[3 * j]! - unit[3 * before]!;
    turn[3 * j + 1] = unit[3 * j + 1]! - unit[3 * before + 1]!;
    turn[3 * j + 2] = unit[3 * j + 2]! - unit[3 * before + 2]!;
  }
}

/** Smooth length of segment j, adding its gradient with respect to the turns to `lengthEdge`. */
function segmentLength(
  j: number,
  next: number,
  weight: number,
  ra: number,
  rb: number,
  { chord, turn, lengthEdge }: Evaluation,
): number {
  const ax = ra * turn[3 * j]!;
  const ay = ra * turn[3 * j + 1]!;
  const az = ra * turn[3 * j + 2]!;
  const bx = rb * turn[3 * next]!;
  const by = rb * turn[3 * next + 1]!;
  const bz = rb * turn[3 * next + 2]!;
  const c = weight * chord[j]!;
  const own = 1 / 45;
  const cross = 7 / 360;
  lengthEdge[3 * j] = lengthEdge[3 * j]! + c * ra * (own * ax + cross * bx);
  lengthEdge[3 * j + 1] = lengthEdge[3 * j + 1]! + c * ra * (own * ay + cross * by);
  lengthEdge[3 * j + 2] = lengthEdge[3 * j + 2]! + c * ra * (own * az + cross * bz);
  lengthEdge[3 * next] = lengthEdge[3 * next]! + c * rb * (own * bx + cross * ax);
  lengthEdge[3 * next + 1] = lengthEdge[3 * next + 1]! + c * rb * (own * by + cross * ay);
  lengthEdge[3 * next + 2] = lengthEdge[3 * next + 2]! + c * rb * (own * bz + cross * az);
  return chord[j]! * (1 + excess(ax, ay, az, bx, by, bz));
}

/** Turns what is known per turn into edges, leaves the length's share in `lengthEdge`, scatters. */
function edgeGradients(
  loop: Elements['loop'],
  { hold }: Frames,
  from: number,
  to: number,
  pull: number,
  { chord, unit, turn, lengthEdge: D }: Evaluation,
  g: Float64Array,
): void {
  const { nodes, segmentWeight, turnWeight, stiffness, shareA, shareB } = loop;
  const firstD0 = D[3 * from]!;
  const firstD1 = D[3 * from + 1]!;
  const firstD2 = D[3 * from + 2]!;
  for (let j = from; j < to; j++) {
    const next = j + 1 < to ? j + 1 : from;
    const last = next === from;
    const c = chord[j]!;
    const tx = unit[3 * j]!;
    const ty = unit[3 * j + 1]!;
    const tz = unit[3 * j + 2]!;
    // Length: D_j − D_{j+1}; the first node's D has been overwritten by the time the loop closes.
    const lx = D[3 * j]! - (last ? firstD0 : D[3 * next]!);
    const ly = D[3 * j + 1]! - (last ? firstD1 : D[3 * next + 1]!);
    const lz = D[3 * j + 2]! - (last ? firstD2 : D[3 * next + 2]!);
    const alongL = lx * tx + ly * ty + lz * tz;
    const w = segmentWeight[j]!;
    const ra = shareA[j]!;
    const rb = shareB[j]!;
    const stretch =
      w === 0
        ? 0
        : w *
          (1 +
            excess(
              ra * turn[3 * j]!,
              ra * turn[3 * j + 1]!,
              ra * turn[3 * j + 2]!,
              rb * turn[3 * next]!,
              rb * turn[3 * next + 1]!,
              rb * turn[3 * next + 2]!,
            ));
    const ex = stretch * tx + (lx - alongL * tx) / c;
    const ey = stretch * ty + (ly - alongL * ty) / c;
    const ez = stretch * tz + (lz - alongL * tz) / c;
    // Bending: M_j − M_{j+1}.
    const kj = turnWeight[j]! * stiffness[j]!;
    const kn = turnWeight[next]! * stiffness[next]!;
    const mx = kj * (turn[3 * j]! - hold[3 * j]!) - kn * (turn[3 * next]! - hold[3 * next]!);
    const my =
      kj * (turn[3 * j + 1]! - hold[3 * j + 1]!) - kn * (turn[3 * next + 1]! - hold[3 * next + 1]!);
    const mz =
      kj * (turn[3 * j + 2]! - hold[3 * j + 2]!) - kn * (turn[3 * next + 2]! - hold[3 * next + 2]!);
    const alongM = mx * tx + my * ty + mz * tz;
    const fx = pull * ex + (mx - alongM * tx) / c;
    const fy = pull * ey + (my - alongM * ty) / c;
    const fz = pull * ez + (mz - alongM * tz) / c;
    D[3 * j] = ex;
    D[3 * j + 1] = ey;
    D[3 * j + 2] = ez;
    const a = 3 * nodes[j]!;
    const b = 3 * nodes[next]!;
    g[a] = g[a]! - fx;
    g[a + 1] = g[a + 1]! - fy;
    g[a + 2] = g[a + 2]! - fz;
    g[b] = g[b]! + fx;
    g[b + 1] = g[b + 1]! + fy;
    g[b + 2] = g[b + 2]! + fz;
  }
}
