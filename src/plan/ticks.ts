/** Round numbers for the axes of girth lines, on the screen and on paper. */
import type { Unit } from './schema.ts';

const inch = 25.4;
const inchSteps = [1 / 16, 1 / 8, 1 / 4, 1 / 2, 1, 2, 3, 6, 12, 24, 48, 96];
const metricSteps = [0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000];
const rowSteps = [1, 2, 4, 5, 8, 10, 20, 25, 50, 100];

/** Lengths from `least` to `most`, mm, that are round in `unit`: at most `count`, but at least one step. */
export function lengthTicks(least: number, most: number, unit: Unit, count: number): number[] {
  const steps = unit === 'in' ? inchSteps.map((step) => step * inch) : metricSteps;
  return multiples(least, most, wideEnough(steps, (most - least) / Math.max(1, count)));
}

/** Rows to number on the axis, from 0 (the base) to the last, at most about `count`. */
export function rowTicks(rows: number, count: number): number[] {
  return multiples(0, rows, wideEnough(rowSteps, rows / Math.max(1, count)));
}

function wideEnough(steps: readonly number[], width: number): number {
  return steps.find((step) => step >= width) ?? steps.at(-1) ?? 1;
}

function multiples(least: number, most: number, step: number): number[] {
  const first = Math.ceil(least / step - 1e-9);
  const last = Math.floor(most / step + 1e-9);
  return Array.from(
    { length: Math.max(0, last - first + 1) },
    (_, index) => (first + index) * step,
  );
}
