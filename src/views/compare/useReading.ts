import { useDeferredValue, useMemo } from 'react';
import { useSide } from '../../keep/compareHere.ts';
import type { Basket } from '../../model/basket.ts';
import type { ComparedBy, Differences } from '../../model/compare/differences.ts';
import { differences } from '../../model/compare/differences.ts';
import type { Measure } from '../../model/compare/measures.ts';
import { measures } from '../../model/compare/measures.ts';
import type { Unit } from '../../plan/schema.ts';

/** What is read off both baskets; null until both have settled. */
export interface Reading {
  readonly a: Basket;
  readonly b: Basket;
  readonly differences: Differences;
  /** Made when there is time: a drag does not wait for them. */
  readonly measures: readonly Measure[];
}

/** The two baskets as they are now, compared, with heights in steps that are round in `unit`. */
export function useReading(by: ComparedBy, unit: Unit): Reading | null {
  const a = useSide('a', ({ basket }) => basket);
  const b = useSide('b', ({ basket }) => basket);
  const [lateA, lateB] = [useDeferredValue(a), useDeferredValue(b)];
  const figures = useMemo(() => (lateA && lateB ? measures(lateA, lateB) : []), [lateA, lateB]);
  const found = useMemo(() => (a && b ? differences(a, b, by, unit) : null), [a, b, by, unit]);
  return useMemo(
    () => (a && b && found ? { a, b, differences: found, measures: figures } : null),
    [a, b, found, figures],
  );
}
