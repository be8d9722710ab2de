/** Round baskets on a wheel base, settled, and their rows read off as rings. Lengths mm. */
import type { Net } from '../../../src/model/net/net.ts';
import { settlePlan } from '../../../src/model/settle/settlePlan.ts';
import type { Plan } from '../../../src/plan/schema.ts';
import { planSchema } from '../../../src/plan/schema.ts';

/** A round basket by its meridian: girths stand at half a pitch above the top of the row before. */
export interface RoundShape {
  readonly diameter: number;
  readonly rows: number;
  readonly pitch: number;
  /** Girth of row `row` (1 … rows). */
  readonly girth: (row: number) => number;
  readonly ends?: number;
  readonly set?: number;
  /** Every length of the strands times this. */
  readonly scale?: number;
  readonly lift?: number;
}

/** Its plan: an even wheel, creased, rows butted tight. */
export function roundPlan(shape: RoundShape): Plan {
  const { diameter, rows, pitch, girth, ends = 48, set = 0.5, scale = 1, lift = 0 } = shape;
  const byRow = Array.from({ length: rows }, (_, index) => [`${index + 1}`, girth(index + 1)]);
  return planSchema.parse({
    format: 'girthline',
    version: 1,
    name: 'Round',
    base: {
      kind: 'wheel',
      spokes: ends / 2,
      stake: { section: 'flat', width: 6 * scale, thickness: scale },
      hub: diameter / 10,
      diameter,
      upsett: 'creased',
      centreLift: lift,
    },
    bands: [
      {
        rows,
        weave: 'rounds',
        weaver: { section: 'flat', width: pitch, thickness: 1.5 * scale },
        packing: 1,
      },
    ],
    set: { stakes: set },
    girthLine: {
      points: [{ row: rows, girth: girth(rows) }],
      rows: Object.fromEntries(byRow),
    },
  });
}

/** Height over the base's edge and distance from the axis, mean and how far the nodes spread. */
export interface Ring {
  readonly height: number;
  readonly radius: number;
  readonly unround: number;
}

/** Rings of rows 0 … R. */
function rings(net: Net, x: ArrayLike<number>): Ring[] {
  const raw = net.rows.map(({ nodes }) => {
    const at = (node: number, d: number) => x[3 * node + d] ?? Number.NaN;
    const radii = Array.from(nodes, (node) => Math.hypot(at(node, 0), at(node, 1)));
    return {
      height: mean(Array.from(nodes, (node) => at(node, 2))),
      radius: mean(radii),
      unround: Math.max(...radii) - Math.min(...radii),
    };
  });
  const foot = raw[0]?.height ?? 0;
  return raw.map((ring) => ({ ...ring, height: ring.height - foot }));
}

/** Rings of the settled plan. */
export function settledRings(shape: RoundShape): Ring[] {
  const { work } = settlePlan(roundPlan(shape));
  return rings(work.net, work.x);
}

/** How far `value` is off `expected`, as a share of it. */
export function off(value: number, expected: number): number {
  return Math.abs(value / expected - 1);
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
