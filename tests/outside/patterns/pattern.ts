/** A published pattern set up as a plan, and what of it can be compared. Lengths mm. */
import type { Basket } from '../../../src/model/basket.ts';
import { baseGirth } from '../../../src/plan/baseSize.ts';
import type { MatBase, Plan, PlanDocument, Strand } from '../../../src/plan/schema.ts';
import { planSchema } from '../../../src/plan/schema.ts';
import { strandSizes } from '../../../src/plan/strandSizes.ts';

export const inch = 25.4;

/** What a figure is of: the finished basket, a piece to cut, or a sum over a base, its gaps or its rows. */
export type FigureKind = 'size' | 'cut' | 'sum';

/** One figure that a pattern publishes, and what the tool says. */
export interface Figure {
  readonly what: string;
  readonly kind: FigureKind;
  readonly published: number;
  readonly predicted: number;
  /** Why it is far off, where it is. */
  readonly because?: string;
}

/** A rule that a pattern or handbook states, and whether the tool keeps to it. */
interface Rule {
  readonly rule: string;
  readonly kept: boolean;
}

/** A row of the table of published patterns. */
export interface Pattern {
  readonly number: number;
  readonly name: string;
  readonly source: string;
  /** The plainest reading of what the pattern leaves open. */
  readonly reading: string;
  readonly figures: readonly Figure[];
  readonly rules: readonly Rule[];
  /** What of it cannot be computed, and why. */
  readonly leftOut?: string;
}

/** A strand of the app's own table by its trade name; a width in mm takes the nearest size's thickness. */
export function reed(section: Strand['section'], name: string | number): Strand {
  const sizes = strandSizes[section];
  const near = (width: number) => Math.abs(width - Number(name));
  const size =
    typeof name === 'string'
      ? sizes.find((one) => one.name === name)
      : sizes.toSorted((p, q) => near(p.width) - near(q.width))[0];
  if (!size) throw new RangeError(`name is ${name}, allowed a size of ${section} reed`);
  const width = typeof name === 'string' ? size.width : name;
  return { section, width, thickness: size.thickness };
}

/** Wall that one row twined of No. 2 round reed takes up at the usual packing. */
export const twinedRow = 2 * reed('round', 'No. 2').thickness * 1.05;

/** Rows of one strand that start and stop. */
export function rows(count: number, weaver: Strand): PlanDocument['bands'][number] {
  return { rows: count, weave: 'rounds', weaver };
}

/** The one corner hold of every mat whose corners are squared: docs/agreement.md says why. */
export const usualHold = 0.7;

/** A mat of `length` × `width` as twined, its gaps evened out to that size, its corners squared to the top. */
export function mat(
  lengthwise: number,
  crosswise: number,
  stake: Strand,
  size: { readonly length: number; readonly width: number },
  hold = usualHold,
): MatBase {
  const gap = (across: number, count: number) => (across - count * stake.width) / (count - 1);
  return {
    kind: 'mat',
    lengthwise,
    crosswise,
    stake,
    gaps: { lengthwise: gap(size.width, lengthwise), crosswise: gap(size.length, crosswise) },
    // Falling to 0 at the 300th row is as good as held all the way up.
    corners: { kind: 'square', rows: 0, hold, holdRows: 300 },
    upsett: 'creased',
    centreLift: 0,
  };
}

type Woven = Pick<PlanDocument, 'name' | 'base' | 'bands'> &
  Partial<Pick<PlanDocument, 'handle' | 'oddEnd' | 'allowances'>>;

/** A plan whose girth stays that of its base, unless `girths` says otherwise by row. */
export function plain(woven: Woven, girths: Readonly<Record<string, number>> = {}): Plan {
  const points = Object.entries(girths).map(([row, girth]) => ({ row: Number(row), girth }));
  const document = { format: 'girthline', version: 1, ...woven } as const;
  const straight = [{ row: 1, girth: 100 }];
  const read = planSchema.parse({
    ...document,
    girthLine: { points: points.length > 0 ? points : straight },
  });
  if (points.length > 0) return read;
  return planSchema.parse({
    ...document,
    girthLine: { points: [{ row: 1, girth: baseGirth(read.base) }] },
  });
}

/** Height of the finished basket: its highest stake's top, and half a rim of this width above it. */
export function finishedHeight({ summary }: Pick<Basket, 'summary'>, rim = 0): number {
  return summary.height + rim / 2;
}

/** Length of the part of this name in the cut list, each piece. */
export function cut({ cutList }: Pick<Basket, 'cutList'>, part: string): number {
  const line = cutList.find((one) => one.part === part);
  if (!line) throw new RangeError(`part is ${part}, allowed one of the cut list`);
  return line.length;
}

/** How far the prediction is off, as a share of the published figure. */
export function error({ predicted, published }: Figure): number {
  return predicted / published - 1;
}
