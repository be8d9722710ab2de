/** What tests of settled shapes measure them by, and plans that they settle. */
import { girthLine } from '../../../src/model/girth/girthLine.ts';
import type { Plan, PlanDocument } from '../../../src/plan/schema.ts';
import { planOf } from '../../plan/plans.ts';

/** Longest distance of a node in one shape from the same node in the other, mm. */
export function farthest(one: Float64Array, other: Float64Array): number {
  let most = 0;
  for (let i = 0; i < one.length; i += 3) {
    const off = [0, 1, 2].map((d) => (one[i + d] ?? Number.NaN) - (other[i + d] ?? Number.NaN));
    most = Math.max(most, Math.hypot(...off));
  }
  return most;
}

/** x, y, z of each node turned by `turn` and moved to where `image` says. */
export function moved(
  shape: Float64Array,
  image: (node: number) => number,
  turn: (x: number, y: number, z: number) => readonly [number, number, number],
): Float64Array {
  const to = new Float64Array(shape.length);
  for (let node = 0; 3 * node < shape.length; node++) {
    const [x = 0, y = 0, z = 0] = shape.subarray(3 * node, 3 * node + 3);
    to.set(turn(x, y, z), 3 * image(node));
  }
  return to;
}

/** Least and most width of the outline of `nodes` across, over all directions of the plan view, mm. */
export function widthsAcross(
  positions: Float64Array,
  nodes: ArrayLike<number>,
): { readonly least: number; readonly most: number } {
  let [least, most] = [Number.POSITIVE_INFINITY, 0];
  for (let step = 0; step < 360; step++) {
    const [cos, sin] = [Math.cos((Math.PI * step) / 360), Math.sin((Math.PI * step) / 360)];
    let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
    for (const node of Array.from(nodes)) {
      const along = (positions[3 * node] ?? 0) * cos + (positions[3 * node + 1] ?? 0) * sin;
      low = Math.min(low, along);
      high = Math.max(high, along);
    }
    least = Math.min(least, high - low);
    most = Math.max(most, high - low);
  }
  return { least, most };
}

/** What a mat plan is made from, where it differs from `matPlan`'s own. */
export interface MatChanges {
  readonly lengthwise?: number;
  readonly crosswise?: number;
  readonly rows?: number;
  readonly base?: Partial<PlanDocument['base']>;
  readonly bands?: PlanDocument['bands'];
  /** Girth at some rows, as a share of the base girth. */
  readonly girths?: readonly (readonly [row: number, share: number])[];
  readonly set?: number;
  readonly oddEnd?: PlanDocument['oddEnd'];
}

/** 7 + 7 flat stakes of 12 mm, a square creased base, 30 rows of 5 mm and the same girth all the way up. */
export function matPlan(changes: MatChanges = {}): Plan {
  const { lengthwise = 7, crosswise = 7, rows = 30 } = changes;
  const document = {
    format: 'girthline',
    version: 1,
    name: 'Mat',
    base: {
      kind: 'mat',
      lengthwise,
      crosswise,
      stake: { section: 'flat', width: 12, thickness: 1.2 },
      gap: 6,
      corners: { kind: 'square' },
      upsett: 'creased',
      centreLift: 0,
      ...changes.base,
    },
    bands: changes.bands ?? [
      {
        rows,
        weave: 'rounds',
        weaver: { section: 'flat-oval', width: 5, thickness: 1.8 },
        packing: 1,
      },
    ],
    oddEnd: changes.oddEnd ?? { kind: 'none' },
    set: { stakes: changes.set ?? 0 },
    girthLine: { points: [{ row: 1, girth: 1000 }] },
  } as PlanDocument;
  const girth = girthLine(planOf(document))[0] ?? Number.NaN;
  const points = (changes.girths ?? [[1, 1]]).map(([row, share]) => ({
    row,
    girth: share * girth,
  }));
  return planOf({ ...document, girthLine: { points } });
}

/** Pinned corners, rolled upsett, a belly and a narrower rim, its middle pushed in by 14 mm: mirrors in both planes. */
export const belliedPlan = matPlan({
  lengthwise: 5,
  crosswise: 8,
  base: {
    corners: { kind: 'pinned', rows: 6, hold: 0.4, holdRows: 10 },
    upsett: 'rolled',
    centreLift: 14,
  } as Partial<PlanDocument['base']>,
  girths: [
    [8, 1.05],
    [16, 1.14],
    [30, 0.98],
  ],
  set: 0.5,
});
