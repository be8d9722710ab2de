import { useCallback, useEffect, useMemo, useRef, useState } from 'react';
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
  /** Row shown, 1 … ready. */
  readonly row: number;
  /** The basket as it stands after that row; null before the first is settled. */
  readonly shown: ShownBasket | null;
  readonly problem: string | null;
  /** True until all rows are settled, or settling was stopped. */
  readonly isSettling: boolean;
  /** Shows the basket after another row. */
  goTo(row: number): void;
  /** Stops settling further rows. */
  stop(): void;
}

/** Settles `plan` row by row, in a worker of its own; another plan starts anew. */
export function useBuildUp(plan: Plan): BuildUp {
  const [baskets, setBaskets] = useState<readonly Basket[]>([]);
  const [row, setRow] = useState(1);
  const [problem, setProblem] = useState<string | null>(null);
  const [isStopped, setStopped] = useState(false);
  const stopping = useRef<() => void>(() => undefined);

  useEffect(() => {
    setBaskets([]);
    setRow(1);
    setProblem(null);
    setStopped(false);
    stopping.current = buildUp(plan, {
      onRow: (_, basket) => setBaskets((before) => [...before, basket]),
      onFailed: (reason) => setProblem(`The rows could not all be settled (${reason}).`),
    });
    return () => stopping.current();
  }, [plan]);

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
    row,
    shown,
    problem,
    goTo: setRow,
    isSettling: baskets.length < rows && !isStopped && problem === null,
    stop: useCallback(() => {
      stopping.current();
      setStopped(true);
    }, []),
  };
}
