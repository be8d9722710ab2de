import type { Basket } from '../../src/model/basket.ts';
import { girthLine } from '../../src/model/girth/girthLine.ts';
import type { Plan } from '../../src/plan/schema.ts';

export type SampleBasket = Pick<Basket, 'plan' | 'rows' | 'summary' | 'findings'>;

/** A basket record with round numbers and no shape: what the charts read, and nothing else. */
export function sampleBasket(plan: Plan, findings: Basket['findings'] = []): SampleBasket {
  const girths = girthLine(plan);
  const rows = Array.from(girths.slice(1), (girth, index) => ({
    row: index + 1,
    girth,
    girthReached: girth,
    tapeGirth: girth + 10,
    change: girth - (girths[index] ?? girth),
    changePerGap: 0.1,
    length: 250,
    width: 200,
    heightSide: 4 * index,
    heightCorner: 4 * index,
    lean: -5,
    leanMost: 8,
    gapLeast: 5,
    gapMost: 9,
    edgeStrain: 0.002,
    wall: 5 * (index + 1),
  }));
  return {
    plan,
    summary: {
      ends: 29,
      rows: rows.length,
      baseGirth: girths[0] ?? 0,
      baseLength: 200,
      baseWidth: 150,
      height: 127,
      heightWithRim: 133.35,
      belly: { row: 18, tapeGirth: 762 },
      rim: { tapeGirth: 660.4, length: 210, width: 200 },
      footHeight: 12.7,
      centreClearance: 6.35,
      feet: 4,
      capacity: 4_404_883,
      tipAngle: 40,
      wallArea: 90_000,
      weaverLength: 23_500,
      weight: 310,
      iterations: 30,
      worstGirthError: 0,
      worstStakeStretch: 0,
    },
    rows,
    findings,
  };
}
