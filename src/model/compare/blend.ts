/**
 * A third plan between two: the first one's base, bands and corners with a girth line that lies
 * between both girth lines. Where the second has another number of rows, its line is read at the
 * same share of the wall; where it has another base, in proportion to the base, as a line follows its
 * base elsewhere (plan/rescale.ts).
 */
import { comparingWords } from '#words/comparing.ts';
import { baseGirth } from '../../plan/baseSize.ts';
import { rowCount } from '../../plan/counts.ts';
import { legalGirth } from '../../plan/edit.ts';
import { limits } from '../../plan/limits.ts';
import { withMeasures } from '../../plan/measures.ts';
import type { GirthPoint, Plan } from '../../plan/schema.ts';
import { girthLine } from '../girth/girthLine.ts';

/** How far a row of the blend may lie from the plain mean of both lines, mm. */
const tolerance = 0.5;

/** The blend of `a` and `b`; `share` is 0 for the girth line of `a`, 1 for that of `b`. */
export function blend(a: Plan, b: Plan, share: number): Plan {
  const t = Math.min(1, Math.max(0, Number.isFinite(share) ? share : 0));
  const rows = rowCount(a);
  const step = rowCount(b) / rows;
  const factor = proportion(a, b);
  const [lineA, lineB] = [smooth(a), smooth(b).map((girth) => factor * girth)];
  const mean = (row: number) => mixed(lineA[row] ?? 0, readBetween(lineB, row * step), t);
  const line = t === 0 ? a.girthLine.points : points(a, pointRows(a, b), mean);
  const exact = t === 1 && step === 1 && factor === 1 ? b.girthLine.points : line;
  const girthLine = { points: exact, rows: byHand(a, b, t, mean) };
  return withMeasures({ ...a, name: blendName(a, b, t), girthLine }, { girths: {}, across: {} });
}

/** The girth line without the rows set by hand. */
function smooth(plan: Plan): Float64Array {
  return girthLine({ ...plan, girthLine: { ...plan.girthLine, rows: {} } });
}

/** How much wider the base of the first plan is; 1 where both have one base girth. */
function proportion(a: Plan, b: Plan): number {
  return baseGirth(a.base) / baseGirth(b.base);
}

/** Rows of the blend that a point of either line stands on; evenly thinned where they are too many. */
function pointRows(a: Plan, b: Plan): number[] {
  const rows = rowCount(a);
  const step = rows / rowCount(b);
  const all = new Set([
    ...a.girthLine.points.map(({ row }) => row),
    ...b.girthLine.points.map(({ row }) => onWall(row * step, rows)),
  ]);
  const sorted = [...all].sort((one, other) => one - other);
  const thin = Math.ceil(sorted.length / (limits.points.most / 2));
  return sorted.filter((_, at) => (sorted.length - 1 - at) % thin === 0);
}

/** Points on the mean of both lines: on the rows given, and on more until no row lies off it. */
function points(a: Plan, given: readonly number[], mean: (row: number) => number): GirthPoint[] {
  const chosen = new Set(given);
  const total = rowCount(a);
  for (;;) {
    const made = [...chosen]
      .sort((one, other) => one - other)
      .map((row) => ({ row, girth: legalGirth(mean(row)) ?? limits.girth.least }));
    if (chosen.size >= Math.min(limits.points.most, total)) return made;
    const line = girthLine({ ...a, girthLine: { points: made, rows: {} } });
    let worst = 0;
    for (let row = 1, most = tolerance; row <= total; row += 1) {
      const off = Math.abs((line[row] ?? 0) - mean(row));
      if (off <= most) continue;
      most = off;
      worst = row;
    }
    if (worst === 0 || chosen.has(worst)) return made;
    chosen.add(worst);
  }
}

/** Rows that either plan sets by hand, each as far from the other's line as the share says. */
function byHand(
  a: Plan,
  b: Plan,
  t: number,
  mean: (row: number) => number,
): Record<string, number> {
  const rows = rowCount(a);
  const step = rows / rowCount(b);
  const factor = proportion(a, b);
  const handB = new Map(
    Object.entries(b.girthLine.rows).map(([row, girth]) => [
      onWall(Number(row) * step, rows),
      factor * girth,
    ]),
  );
  const handA = new Map(
    Object.entries(a.girthLine.rows).map(([row, girth]) => [Number(row), girth]),
  );
  const set: Record<string, number> = {};
  const [lineA, lineB] = [smooth(a), smooth(b).map((girth) => factor * girth)];
  for (const row of new Set([...handA.keys(), ...handB.keys()])) {
    const one = handA.get(row) ?? lineA[row] ?? mean(row);
    const other = handB.get(row) ?? readBetween(lineB, row / step);
    const isLeft = (t === 0 && !handA.has(row)) || (t === 1 && !handB.has(row));
    const girth = legalGirth(mixed(one, other, t));
    if (!isLeft && girth !== undefined) set[row] = girth;
  }
  return set;
}

function blendName(a: Plan, b: Plan, t: number): string {
  const percent = Math.round(100 * t);
  const short = ({ name }: Plan) => name.slice(0, 50).trim();
  return comparingWords.blend(short(a), percent, short(b)).trim();
}

function onWall(row: number, rows: number): number {
  return Math.min(rows, Math.max(1, Math.round(row)));
}

/** The line at `row`, straight between two rows. */
function readBetween(line: Float64Array, row: number): number {
  const low = Math.min(line.length - 1, Math.floor(row));
  const high = Math.min(line.length - 1, low + 1);
  return mixed(line[low] ?? 0, line[high] ?? 0, row - low);
}

function mixed(one: number, other: number, t: number): number {
  return one + t * (other - one);
}
