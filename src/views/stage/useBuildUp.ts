import { useCallback, useEffect, useMemo, useRef, useState } from 'react';
import type { BasketMesh } from '../../mesh/basketMesh.ts';
import { basketMesh } from '../../mesh/basketMesh.ts';
import type { Basket } from '../../model/basket.ts';
import { standing } from '../../model/buildup/cutPlan.ts';
import { rowCount } from '../../plan/counts.ts';
import type { Plan } from '../../plan/schema.ts';
import { buildUp } from '../../work/buildUp.ts';

/** The basket row by row, as far as it has been settled. */
export interface BuildUp {
  /** Rows of the plan. */
  readonly rows: number;
  /** Rows settled so far; all of them once done. */
  readonly ready: number;
  /** Row shown, 1 … ready. */
  readonly row: number;
  /** The basket as it stands after that row; null before the first is settled. */
  readonly shown: { readonly basket: Basket; readonly mesh: BasketMesh } | null;
  readonly problem: string | null;
  /** Shows the basket after another row. */
  goTo(row: number): void;
  /** Stops settling further rows. */
  stop(): void;
}

/** Settles `plan` row by row while `isOn`, in a worker of its own; another plan starts anew. */
export function useBuildUp(plan: Plan, isOn: boolean): BuildUp {
  const [baskets, setBaskets] = useState<readonly Basket[]>([]);
  const [row, setRow] = useState(1);
  const [problem, setProblem] = useState<string | null>(null);
  const stopping = useRef<() => void>(() => undefined);

  useEffect(() => {
    if (!isOn) return;
    setBaskets([]);
    setRow(1);
    setProblem(null);
    stopping.current = buildUp(plan, {
      onRow: (_, basket) => setBaskets((before) => [...before, basket]),
      onFailed: (reason) => setProblem(`The rows could not all be settled (${reason}).`),
    });
    return () => stopping.current();
  }, [plan, isOn]);

  const basket = isOn ? baskets[row - 1] : undefined;
  const shown = useMemo(
    () =>
      basket
        ? { basket, mesh: basketMesh(basket, { standing: standing(plan, basket.rows.length) }) }
        : null,
    [basket, plan],
  );
  return {
    rows: rowCount(plan),
    ready: baskets.length,
    row,
    shown,
    problem,
    goTo: setRow,
    stop: useCallback(() => stopping.current(), []),
  };
}
