/**
 * The wall and the base have thickness; the net runs through their middle. A weaver lies outside the
 * stake where it goes over and inside where it goes under, so at both faces of the wall a weaver's
 * whole thickness lies on half a stake. A tape and a filling touch these faces and bridge what lies
 * between two of them.
 */
import { bandOfRow } from '../../plan/counts.ts';
import type { Plan } from '../../plan/schema.ts';

/** From the middle of the wall to either face at row `row` (1 … R), mm. */
export function halfWall(plan: Plan, row: number): number {
  return plan.base.stake.thickness / 2 + bandOfRow(plan, row).weaver.thickness;
}

/** From the middle of the base to either face, mm: one stake where two cross, half of a board. */
export function halfBase({ base }: Plan): number {
  return base.kind === 'board' ? base.thickness / 2 : base.stake.thickness;
}

/** The same on the base's edge, where a stake leaves it. */
export function halfEdge({ base }: Plan): number {
  return base.kind === 'board' ? base.thickness / 2 : base.stake.thickness / 2;
}
