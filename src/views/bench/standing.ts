/** How the basket on the table stands to its plan, in words. */
import { benchWords } from '#words/bench.ts';
import type { Unit } from '../../plan/schema.ts';
import { formatChange, shownChange } from '../../plan/units.ts';
import { tellable } from './benchWork.ts';

const words = benchWords.table;

interface Standing {
  /** On the table and in the plan, mm. */
  readonly now: number;
  readonly plan: number;
  /** Rows it has moved up, below 0 down. */
  readonly moved: number;
  readonly unit: Unit;
}

/** `as planned`, `+1/8 in against the plan`, `1 row lower than planned`, or the last two at once. */
export function standing({ now, plan, moved, unit }: Standing): string {
  const off = shownChange(plan, now, unit);
  const isOff = Math.abs(now - plan) > tellable && off !== 0;
  const change = formatChange(off, unit);
  if (moved === 0) return isOff ? words.toPlan(change) : benchWords.asPlanned;
  return isOff ? words.both(change, words.moved(moved)) : words.moved(moved);
}
