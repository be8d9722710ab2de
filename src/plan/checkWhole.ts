/** Rules of a plan that no single key can tell: sums, and rows against the rows there are. */
import type { z } from 'zod';
import { baseGirth, baseLift, baseSize } from './baseSize.ts';
import { endCount, rowCount } from './counts.ts';
import { limits } from './limits.ts';
import type { Plan } from './schema.ts';

type Path = (string | number)[];

/** Adds an issue to `issues` for every rule that `plan` breaks. */
export function checkWhole(plan: Plan, issues: z.core.$ZodRawIssue[]): void {
  const refuse = (path: Path, found: string, message: string) =>
    issues.push({ code: 'custom', input: plan, path, message, params: { found } });
  const rows = rowCount(plan);
  const ends = endCount(plan);
  const girth = baseGirth(plan.base);
  const { width, length } = baseSize(plan.base);
  const mostLift = Math.min(width, length) * limits.centreLift.mostShare;

  if (rows > limits.rows.most) {
    refuse(['bands'], `${rows} rows in all`, `at most ${limits.rows.most} rows in all`);
  }
  if (ends > limits.ends.most) {
    refuse(['base'], `${ends} ends`, `at most ${limits.ends.most} ends round the wall`);
  }
  if (!(girth >= limits.girth.least && girth <= limits.girth.most)) {
    const { least, most } = limits.girth;
    refuse(
      ['base'],
      `a base girth of ${rounded(girth)} mm`,
      `a base girth of ${least} to ${most} mm`,
    );
  }
  if (!(baseLift(plan.base) <= mostLift)) {
    refuse(
      ['base', 'centreLift'],
      `${baseLift(plan.base)}`,
      `at most half of the shorter side of the base, ${rounded(mostLift)} mm`,
    );
  }
  checkPoints(plan, rows, refuse);
  for (const key of Object.keys(plan.girthLine.rows)) {
    if (Number(key) > rows) refuse(['girthLine', 'rows', key], `row ${key}`, rowsThereAre(rows));
  }
  for (const key of Object.keys(plan.measured)) {
    if (Number(key) > rows) refuse(['measured', key], `row ${key}`, rowsThereAre(rows));
  }
  for (const key of Object.keys(plan.measuredAcross ?? {})) {
    if (Number(key) > rows) refuse(['measuredAcross', key], `row ${key}`, rowsThereAre(rows));
  }
}

function checkPoints(
  plan: Plan,
  rows: number,
  refuse: (path: Path, found: string, message: string) => void,
): void {
  const seen = new Set<number>();
  plan.girthLine.points.forEach(({ row }, index) => {
    const path = ['girthLine', 'points', index, 'row'];
    if (row > rows) refuse(path, `${row}`, rowsThereAre(rows));
    if (seen.has(row)) refuse(path, `a second point on row ${row}`, 'one point on a row');
    seen.add(row);
  });
}

function rowsThereAre(rows: number): string {
  return `a row from 1 to ${rows}, the last row`;
}

function rounded(value: number): number {
  return Math.round(value * 10) / 10;
}
