import { useCallback, useEffect, useMemo, useRef, useState } from 'react';
import { buildUpWords } from '#words/buildUp.ts';
import { sameShape } from '../../keep/sameShape.ts';
import { basketMesh } from '../../mesh/basketMesh.ts';
import type { Basket } from '../../model/basket.ts';
import { standing } from '../../model/buildup/cutPlan.ts';
import { rowCount } from '../../plan/counts.ts';
import type { Plan } from '../../plan/schema.ts';
import { buildUp } from '../../work/buildUp.ts';
import type { ShownBasket } from './stageShow.ts';

/** The basket row by row, as far as it has been settled. */
export interface BuildUp {
  /** Rows of the plan. */
  readonly rows: number;
  /** Rows settled so far; all of them once done. */
  readonly ready: number;
  /** Steps that can be gone to: the rows settled and, once all of them are, the finished basket. */
  readonly steps: number;
  /** Row shown, 1 … ready, or one more for the finished basket. */
  readonly row: number;
  /** The basket as it stands after that row; null before the first is settled, and once it is finished. */
  readonly shown: ShownBasket | null;
  readonly problem: string | null;
  /** True until all rows are settled, or settling was stopped. */
  readonly isSettling: boolean;
  /** Shows the basket after another row, or finished. */
  goTo(row: number): void;
  /** Stops settling further rows. */
  stop(): void;
  /** Settles the rows anew after a stop. */
  goOn(): void;
}

/** A plan that goes on changing is left alone until it has been still for so long, ms. */
const stillFor = 300;

/** What is known of the rows of one plan; of another plan it says nothing. */
interface Settling {
  readonly plan: Plan;
  readonly baskets: readonly Basket[];
  readonly row: number;
  readonly problem: string | null;
  readonly isStopped: boolean;
}

function nothingOf(plan: Plan): Settling {
  return { plan, baskets: [], row: 1, problem: null, isStopped: false };
}

/** Settles `given` row by row, in a worker of its own; a plan of another shape starts anew. */
export function useBuildUp(given: Plan): BuildUp {
  // a new name or a measured row leaves the rows as they are
  const shape = useRef(given);
  if (shape.current !== given && !sameShape(shape.current, given)) shape.current = given;
  const plan = shape.current;
  const [known, setKnown] = useState<Settling>(() => nothingOf(plan));
  const stopping = useRef<() => void>(() => undefined);
  const { baskets, row, problem, isStopped } = known.plan === plan ? known : nothingOf(plan);

  const begin = useCallback(() => {
    const learn = (more: (before: Settling) => Partial<Settling>) =>
      setKnown((before) => (before.plan === plan ? { ...before, ...more(before) } : before));
    setKnown(nothingOf(plan));
    stopping.current = buildUp(plan, {
      onRow: (_, basket) => learn(({ baskets }) => ({ baskets: [...baskets, basket] })),
      onFailed: (reason) => learn(() => ({ problem: buildUpWords.failed(reason) })),
    });
  }, [plan]);

  const isFirst = useRef(true);
  useEffect(() => {
    if (isFirst.current) begin();
    else {
      const waiting = setTimeout(begin, stillFor);
      stopping.current = () => clearTimeout(waiting);
    }
    isFirst.current = false;
    return () => stopping.current();
  }, [begin]);

  const basket = baskets[row - 1];
  const shown = useMemo(
    () =>
      basket
        ? { basket, mesh: basketMesh(basket, { standing: standing(plan, basket.rows.length) }) }
        : null,
    [basket, plan],
  );
  const rows = rowCount(plan);
  return {
    rows,
    ready: baskets.length,
    steps: baskets.length + (baskets.length === rows ? 1 : 0),
    row,
    shown,
    problem,
    goTo: useCallback((to: number) => setKnown((before) => ({ ...before, row: to })), []),
    isSettling: baskets.length < rows && !isStopped && problem === null,
    stop: useCallback(() => {
      stopping.current();
      setKnown((before) => ({ ...before, isStopped: true }));
    }, []),
    goOn: begin,
  };
}
