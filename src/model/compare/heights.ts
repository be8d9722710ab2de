/** A basket's tape girth by its height over the table. */
import type { Unit } from '../../plan/schema.ts';
import type { RowReading } from '../basket.ts';

/** Rows that stand higher than all before them, from the lowest up. */
export type Profile = readonly Pick<RowReading, 'row' | 'heightSide' | 'tapeGirth'>[];

/** Rows that lie below one before them, as those under a turned-in shoulder do, are left out. */
export function profile(rows: Profile): Profile {
  let highest = Number.NEGATIVE_INFINITY;
  return rows.filter(({ heightSide }) => {
    if (!(heightSide > highest)) return false;
    highest = heightSide;
    return true;
  });
}

/** Tape girth at `height`, mm, straight between the rows, and the nearest row; null beyond them. */
export function readAt(
  rows: Profile,
  height: number,
): { readonly row: number; readonly tapeGirth: number } | null {
  for (let at = 0; at < rows.length; at += 1) {
    const upper = rows[at];
    if (!upper || upper.heightSide < height) continue;
    const lower = rows[at - 1];
    if (!lower) return upper.heightSide === height ? upper : null;
    const share = (height - lower.heightSide) / (upper.heightSide - lower.heightSide);
    return {
      row: share < 0.5 ? lower.row : upper.row,
      tapeGirth: lower.tapeGirth + share * (upper.tapeGirth - lower.tapeGirth),
    };
  }
  return null;
}

const inch = 25.4;
const steps: Readonly<Record<'inch' | 'metric', readonly number[]>> = {
  inch: [0.25, 0.5, 1, 2, 3, 6, 12].map((step) => step * inch),
  metric: [5, 10, 20, 50, 100, 200],
};

/** More heights than this would be read by nobody. */
const mostSteps = 40;

/** Round heights in `unit` at which one of the profiles has a girth, mm, the lowest first. */
export function heightSteps(profiles: readonly Profile[], unit: Unit): number[] {
  const ends = profiles.flatMap((rows) =>
    [rows[0], rows.at(-1)].filter((row) => row !== undefined),
  );
  const low = Math.min(...ends.map(({ heightSide }) => heightSide));
  const high = Math.max(...ends.map(({ heightSide }) => heightSide));
  if (!(low <= high)) return [];
  const choice = steps[unit === 'in' ? 'inch' : 'metric'];
  const step = choice.find((one) => (high - low) / one <= mostSteps) ?? (high - low) / mostSteps;
  const first = Math.ceil(low / step - 1e-9);
  const last = Math.floor(high / step + 1e-9);
  const heights = Array.from(
    { length: Math.max(0, last - first + 1) },
    (_, k) => (first + k) * step,
  );
  return heights.filter((height) => profiles.some((rows) => readAt(rows, height) !== null));
}
