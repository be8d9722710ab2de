import type { Work } from './work.ts';

/**
 * Shape and tensions as one row of numbers, the point that the fixed-point iteration moves. Tensions
 * are divided by the penalty, which makes them lengths like the rest.
 */
export function pointSize({ lead, tensions }: Work): number {
  return lead.length + tensions.segment.length + tensions.loop.length + 1;
}

/** Writes the work's shape and tensions to `point`. */
export function readPoint({ lead, tensions, elements }: Work, point: Float64Array): void {
  const scale = 1 / elements.penalty;
  point.set(lead);
  let at = lead.length;
  for (const group of [tensions.segment, tensions.loop, tensions.lift]) {
    for (let i = 0; i < group.length; i++) point[at++] = scale * group[i]!;
  }
}

/** Sets the work's shape and tensions from `point`. */
export function writePoint({ lead, tensions, elements }: Work, point: Float64Array): void {
  for (let i = 0; i < lead.length; i++) lead[i] = point[i]!;
  let at = lead.length;
  for (const group of [tensions.segment, tensions.loop, tensions.lift]) {
    for (let i = 0; i < group.length; i++) group[i] = elements.penalty * point[at++]!;
  }
}

/** What one step changes: `step` of the leads, and the tensions as raised since `point` was read. */
export function readResidual(
  { lead, tensions, elements }: Work,
  point: Float64Array,
  step: Float64Array,
  residual: Float64Array,
): void {
  const scale = 1 / elements.penalty;
  residual.set(step);
  let at = lead.length;
  for (const group of [tensions.segment, tensions.loop, tensions.lift]) {
    for (let i = 0; i < group.length; i++, at++) residual[at] = scale * group[i]! - point[at]!;
  }
}
