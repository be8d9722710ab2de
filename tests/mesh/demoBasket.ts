import type { Basket } from '../../src/model/basket.ts';
import { girthLine } from '../../src/model/girth/girthLine.ts';
import { basketNet } from '../../src/model/net/basketNet.ts';
import type { Plan } from '../../src/plan/schema.ts';
import { planSchema } from '../../src/plan/schema.ts';

type Change = (plan: Record<string, unknown> & typeof document) => void;

/** 5 + 9 flat stakes, one split: 29 ends; 32 rows of one continuous weaver. */
const document = {
  format: 'girthline',
  version: 1,
  name: 'Windfall basket',
  base: {
    kind: 'mat',
    lengthwise: 5,
    crosswise: 9,
    stake: { section: 'flat', width: 12.7, thickness: 1 },
    gap: 6.35,
    corners: { kind: 'pinned', rows: 8 },
    upsett: 'rolled',
    centreLift: 15,
  },
  oddEnd: { kind: 'split', at: 'middle of a long side' },
  bands: [
    {
      rows: 32,
      weave: 'continuous',
      weaver: { section: 'flat-oval', width: 4.4, thickness: 1.6 },
      packing: 1.02,
      colour: 'natural',
    },
  ],
  girthLine: {
    points: [
      { row: 8, girth: 530 },
      { row: 18, girth: 600 },
      { row: 32, girth: 520 },
    ],
  },
};

/** A plan for tests, changed by `change`. */
export function demoPlan(change: Change = () => undefined): Plan {
  const copy = structuredClone(document);
  change(copy);
  return planSchema.parse(copy);
}

/** The plan with other things said of its one band. */
export function bandPlan(band: object): Plan {
  return demoPlan((plan) => Object.assign(plan.bands[0] ?? {}, band));
}

/** A basket in its start shape: true in its net, not yet settled. All lengths times `scale`. */
export function startBasket(plan: Plan, scale = 1): Basket {
  const net = basketNet(plan, girthLine(plan));
  return {
    plan,
    net,
    positions: net.start.map((value) => value * scale),
    settling: {
      iterations: 0,
      factorisations: 0,
      converged: true,
      lastStep: 0,
      worstGirthError: 0,
      worstStakeStretch: 0,
      rowTension: new Float64Array(net.rows.length),
    },
    summary: {
      ends: net.ends.length,
      rows: net.rows.length - 1,
      baseGirth: 0,
      baseLength: 0,
      baseWidth: 0,
      height: 0,
      heightWithRim: 0,
      belly: { row: 0, tapeGirth: 0 },
      rim: { tapeGirth: 0, length: 0, width: 0 },
      footHeight: 0,
      centreClearance: 0,
      feet: 1,
      capacity: 0,
      tipAngle: 0,
      wallArea: 0,
      weaverLength: 0,
      weight: 0,
      iterations: 0,
      worstGirthError: 0,
      worstStakeStretch: 0,
    },
    rows: [],
    stakes: [],
    cutList: [],
    findings: [],
  };
}
