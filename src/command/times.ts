/** How long a plan takes, in medians over some runs. */
import { basketMesh } from '../mesh/basketMesh.ts';
import { prepare, settlePlan, shapeMemory } from '../model/settle/settlePlan.ts';
import { readSettled } from '../model/settleBasket.ts';
import { endCount, rowCount } from '../plan/counts.ts';
import type { Plan } from '../plan/schema.ts';

export interface Times {
  /** From plan to settled net, from the start shape. */
  readonly settleColdMs: number;
  /** The same after the middle point of the girth line moved by 1 % of its girth, from the last shape. */
  readonly settleWarmMs: number;
  /** Rows, stakes, summary and findings read off the settled net. */
  readonly readMs: number;
  /** Its strands as triangles, with rim and handle, in the lighter look that a drag shows. */
  readonly meshMs: number;
  /** The same in the look that it has at rest. */
  readonly strandsMs: number;
  readonly runs: number;
  readonly ends: number;
  readonly rows: number;
}

/** Runs before those that count: the first ones of a script are several times as slow as it will be. */
const uncounted = 10;

/** Times of `plan`, in milliseconds to the hundredth. */
export function times(plan: Plan, runs = 20): Times {
  const cold = repeated(runs, () => settlePlan(plan));
  const memory = shapeMemory();
  settlePlan(plan, memory);
  const warm = Array.from({ length: runs }, (_, run) => {
    const moved = run % 2 === 0 ? withMovedPoint(plan, 1.01) : plan;
    // As in the app's worker: the factor for the next edit is made while nothing else is asked.
    prepare(memory);
    return timed(() => settlePlan(moved, memory));
  });
  const settled = settlePlan(plan);
  const read = repeated(runs, () => readSettled(plan, settled));
  const basket = readSettled(plan, settled);
  const look = (light: boolean) => repeated(runs, () => basketMesh(basket, { light }));
  const mesh = look(true);
  return {
    settleColdMs: median(cold),
    settleWarmMs: median(warm),
    readMs: median(read),
    meshMs: median(mesh),
    strandsMs: median(look(false)),
    runs,
    ends: endCount(plan),
    rows: rowCount(plan),
  };
}

/** The plan with the girth at the middle point of its girth line multiplied. */
export function withMovedPoint(plan: Plan, factor: number): Plan {
  const { points } = plan.girthLine;
  const middle = Math.floor(points.length / 2);
  const moved = points.map((point, index) =>
    index === middle ? { ...point, girth: point.girth * factor } : point,
  );
  return { ...plan, girthLine: { ...plan.girthLine, points: moved } };
}

/** The middle of the values, or the mean of the two middle ones. */
export function median(values: readonly number[]): number {
  const sorted = [...values].sort((one, other) => one - other);
  const half = (sorted.length - 1) / 2;
  const low = sorted[Math.floor(half)] ?? Number.NaN;
  const high = sorted[Math.ceil(half)] ?? Number.NaN;
  return Math.round(((low + high) / 2) * 100) / 100;
}

/** Times of `runs` runs of `work`, after some that only make the engine compile it. */
function repeated(runs: number, work: () => unknown): readonly number[] {
  for (let run = 0; run < uncounted; run++) work();
  return Array.from({ length: runs }, () => timed(work));
}

function timed(work: () => unknown): number {
  const began = performance.now();
  work();
  return performance.now() - began;
}
