import { endCount } from '../../plan/counts.ts';
import type { Plan } from '../../plan/schema.ts';
import type { BasePart } from './basePart.ts';
import { boardBase } from './board.ts';
import { matBase } from './mat.ts';
import { ovalBase } from './oval.ts';
import { wheelBase } from './wheel.ts';

/** The base of `plan`, laid out. */
export function layOutBase(plan: Plan): BasePart {
  const { base, oddEnd } = plan;
  if (base.kind === 'mat') return matBase(base);
  if (base.kind === 'oval') return ovalBase(base);
  if (base.kind === 'wheel') return wheelBase(base, oddEnd);
  return boardBase(base, endCount(plan) - (oddEnd.kind === 'split' ? 1 : 0));
}

/**
 * True where an odd end shares its place with another: a split stake, or one added beside a stake of a mat.
 * On a wheel and on a board an added end has a place of its own.
 */
export function sharesPlace({ base, oddEnd }: Plan): boolean {
  if (oddEnd.kind === 'none') return false;
  return oddEnd.kind === 'split' || base.kind === 'mat' || base.kind === 'oval';
}
