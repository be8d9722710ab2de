import { useEffect, useMemo, useRef, useState } from 'react';
import { chosenRecord } from '../../keep/benchBook.ts';
import { pageNow, useBenchBook } from '../../keep/benchHere.ts';
import type { BenchRecord } from '../../keep/benchRecord.ts';
import { layOnTable, useBenchTable } from '../../keep/benchTable.ts';
import { useStudio } from '../../keep/useStudio.ts';
import { atTheBench } from '../../model/replan/atTheBench.ts';
import { packingFactor } from '../../model/replan/height.ts';
import { measuredRows, tapeOver } from '../../model/replan/woven.ts';
import type { Plan } from '../../plan/schema.ts';
import type { BenchWork } from './benchWork.ts';
import { padded } from './benchWork.ts';

/** The tape's surplus is taken anew from the settled shape where it has moved by more than this, mm. */
const worthwhile = 0.3;
/** It comes to rest in two or three rounds; more would mean that it never does. */
const mostRounds = 5;

/** The tape's surplus by row off the table, mm, and what it was taken off for. */
interface Refined {
  readonly plan: Plan;
  readonly girths: BenchRecord['girths'];
  readonly over: Float64Array;
}

/** Everything the bench shows; null until the plan has settled for the first time. */
export function useBenchWork(): BenchWork | null {
  const plan = useStudio(({ plan }) => plan);
  const planBasket = useStudio(({ basket }) => basket);
  const { book, isKept } = useBenchBook();
  const id = useStudio(({ history }) => history.id);
  const page = useMemo(() => pageNow(book, plan, id), [book, plan, id]);
  const record = chosenRecord(page);
  const { basket: table, isFinal, problem } = useBenchTable();
  const [refined, setRefined] = useState<Refined | null>(null);
  const [restedOn, setRestedOn] = useState<Plan | null>(null);
  const rounds = useRef(0);

  const plannedOver = useMemo(() => tapeOver(planBasket?.rows ?? []), [planBasket]);
  // What was refined for other measurements says nothing of these: they start from the plan's again.
  const own = refined?.girths === record.girths && refined.plan === plan ? refined : null;
  const over = own?.over ?? plannedOver;
  const course = useMemo(() => {
    if (!planBasket) return null;
    const { height } = record;
    const packing = height ? packingFactor(planBasket, height.row, height.height) : 1;
    const rows = planBasket.rows.length + (record.added?.rows ?? 0);
    const measured = record.girths;
    const done = record.row - 1;
    return atTheBench({
      ...record,
      plan,
      done,
      measured,
      packing,
      over: padded(over, rows + 1),
      plannedOver: padded(plannedOver, rows + 1),
    });
  }, [plan, planBasket, record, over, plannedOver]);

  // biome-ignore lint/correctness/useExhaustiveDependencies: each new measurement or plan starts the rounds anew
  useEffect(() => {
    rounds.current = 0;
  }, [record.girths, plan]);
  useEffect(() => {
    if (course) layOnTable(course.table);
  }, [course]);
  useEffect(() => {
    if (!isFinal || !table || table.plan !== course?.table) return;
    const next = tapeOver(table.rows);
    const rows = [...measuredRows(record.girths), next.length - 1];
    const moved = Math.max(...rows.map((row) => Math.abs((next[row] ?? 0) - (over[row] ?? 0))));
    if (!(moved > worthwhile) || rounds.current >= mostRounds) return setRestedOn(table.plan);
    rounds.current += 1;
    setRefined({ plan, girths: record.girths, over: next });
  }, [table, isFinal, course, over, plan, record.girths]);

  if (!planBasket || !course) return null;
  const rows = course.planned.length - 1;
  return {
    plan,
    page,
    record,
    isKept,
    planBasket,
    table: table && table.rows.length === rows ? table : null,
    problem,
    course,
    isAtRest: restedOn === course.table,
    rows,
    over: padded(over, rows + 1),
    plannedOver: padded(plannedOver, rows + 1),
  };
}
