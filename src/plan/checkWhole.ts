/** Rules of a plan that no single key can tell: sums, and rows against the rows there are. */
import type { z } from 'zod';
import { refusalWords } from '#words/refusals.ts';
import { baseGirth, baseLift, baseSize } from './baseSize.ts';
import { endCount, rowCount } from './counts.ts';
import { limits } from './limits.ts';
import type { Plan } from './schema.ts';

type Path = (string | number)[];

const says = refusalWords.whole;

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
    refuse(['bands'], says.rows(rows), says.mostRows(limits.rows.most));
  }
  if (ends > limits.ends.most) {
    refuse(['base'], says.ends(ends), says.mostEnds(limits.ends.most));
  }
  if (!(girth >= limits.girth.least && girth <= limits.girth.most)) {
    const { least, most } = limits.girth;
    refuse(['base'], says.girth(`${rounded(girth)}`), says.girthRange(`${least}`, `${most}`));
  }
  if (!(baseLift(plan.base) <= mostLift)) {
    refuse(['base', 'centreLift'], `${baseLift(plan.base)}`, says.mostLift(`${rounded(mostLift)}`));
  }
  checkPoints(plan, rows, refuse);
  for (const key of Object.keys(plan.girthLine.rows)) {
    if (Number(key) > rows) {
      refuse(['girthLine', 'rows', key], says.row(key), says.rowsThereAre(rows));
    }
  }
  for (const key of Object.keys(plan.measured)) {
    if (Number(key) > rows) refuse(['measured', key], says.row(key), says.rowsThereAre(rows));
  }
  for (const key of Object.keys(plan.measuredAcross ?? {})) {
    if (Number(key) > rows) {
      refuse(['measuredAcross', key], says.row(key), says.rowsThereAre(rows));
    }
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
    if (row > rows) refuse(path, `${row}`, says.rowsThereAre(rows));
    if (seen.has(row)) refuse(path, says.secondPoint(row), says.onePoint);
    seen.add(row);
  });
}

function rounded(value: number): number {
  return Math.round(value * 10) / 10;
}
