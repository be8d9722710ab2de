/**
 * Source: the elastica, Timoshenko & Gere, Theory of Elastic Stability, table 2-4 (three to four
 * digits); the figures here are the elliptic integrals worked out to more, `geometry.md` 1.6.
 */
import { describe, expect, test } from 'vitest';
import { settle } from '../../src/model/settle/settle.ts';
import { work } from '../../src/model/settle/work.ts';
import { chain, handNet, loop } from './handNet.ts';

/** Tip angle in degrees; load over Euler's, chord and sagitta over half the length, bending. */
const table = [
  {
    tip: 20,
    load: 1.0153968655,
    chord: 0.96973090736,
    sagitta: 0.2194130424,
    bending: 0.15051532631,
  },
  {
    tip: 40,
    load: 1.0636632664,
    chord: 0.88120351173,
    sagitta: 0.42224034012,
    bending: 0.60446624618,
  },
  {
    tip: 60,
    load: 1.1517196205,
    chord: 0.74101960608,
    sagitta: 0.59320764616,
    bending: 1.369836984,
  },
  { tip: 90, load: 1.3932039297, chord: 0.45694658104, sagitta: 0.7627597635, bending: Math.PI },
  {
    tip: 120,
    load: 1.884800869,
    chord: 0.12315997241,
    sagitta: 0.80317099001,
    bending: 5.7960853559,
  },
] as const;

const pieces = 80;
const half = 100;
const stiffness = 3;

/** One stake of 200 mm whose ends are pinned at `chord`·200 mm from one another, bulging up. */
function pinned(chord: number) {
  const nodes = Array.from({ length: pieces + 1 }, (_, i) => i);
  const step = (2 * half) / pieces;
  const net = handNet({
    points: nodes.map((i) => [
      (i / pieces - 0.5) * 2 * half * chord,
      0,
      60 * Math.sin((Math.PI * i) / pieces),
    ]),
    ring: nodes,
    stakes: [chain(nodes, Array<number>(pieces).fill(step), stiffness)],
    rows: [loop([0, pieces], 2 * step, 0, 0)],
    fixed: [0, pieces],
  });
  const own = work(net, 0, 'none');
  const { converged } = settle(own);
  return { own, converged, step };
}

describe.each(table)('a stake with pinned ends and a tip angle of $tip°', (row) => {
  const { own, converged, step } = pinned(row.chord);
  const { x } = own;

  test('bulges as far as the elastica does', () => {
    expect(converged).toBe(true);
    const most = x.reduce((high, value, i) => (i % 3 === 2 ? Math.max(high, value) : high), 0);
    expect(most / half / row.sagitta).toBeCloseTo(1, 3);
  });

  test('leaves its pins at the tip angle', () => {
    // The first piece's chord is half a piece on; the end bears no moment, so the turn there is slight.
    const angle = Math.atan2((x[5] ?? 0) - (x[2] ?? 0), (x[3] ?? 0) - (x[0] ?? 0));
    expect(Math.abs((angle * 180) / Math.PI - row.tip)).toBeLessThan(0.2);
  });

  test('stores the bending that the elastica stores', () => {
    let bending = 0;
    for (let i = 1; i < pieces; i++) {
      for (let d = 0; d < 3; d++) {
        const at = (node: number) => x[3 * node + d] ?? 0;
        bending += ((at(i - 1) - 2 * at(i) + at(i + 1)) / step ** 2) ** 2 * step;
      }
    }
    expect((bending * half) / 2 / row.bending).toBeCloseTo(1, 2);
  });

  test('pushes on its pins with the load of the elastica', () => {
    // At rest the energy's gradient at a pin is the force that the pin bears.
    const euler = (Math.PI ** 2 * stiffness) / (2 * half) ** 2;
    expect(Math.abs(own.out.gradient[0] ?? 0) / euler / row.load).toBeCloseTo(1, 2);
  });
});

test('at a tip angle of 90° the sagitta over half the length is that of the Mylar balloon, r/a = 0.762760', () => {
  const { own } = pinned(0.45694658104);
  const most = own.x.reduce((high, value, i) => (i % 3 === 2 ? Math.max(high, value) : high), 0);
  expect(most / half).toBeCloseTo(0.76276, 3);
});
