/**
 * The net that a plan asks for, against the theory that roundingDecay.test.ts holds a bare wall to.
 *
 * A round wall over a base that is a little out of round rounds itself as it rises. Rows that do not
 * stretch on stakes that bend make a beam on an elastic foundation (M. Hetényi, Beams on Elastic Foundation,
 * 1946; geometry.md 1.5): over a hinged foot a = a0·e^(−bz)·cos bz, over a clamped upright one
 * a = a0·e^(−bz)·(cos bz + sin bz), with b⁴ = (n² − 1)²·B_w·c / (4p·R⁴·B_s·(1 + 1/n²)).
 */
import { expect, test } from 'vitest';
import { evenAngles } from '../../../src/model/base/round.ts';
import type { Net } from '../../../src/model/net/net.ts';
import { settle } from '../../../src/model/settle/settle.ts';
import { work } from '../../../src/model/settle/work.ts';
import { planSchema } from '../../../src/plan/schema.ts';
import { netOf } from '../../model/readings.ts';
import { off } from './roundBasket.ts';

const radius = 100;
const ends = 32;
const pitch = 2.5;
const rows = 56;
const a0 = 0.4;

/** A wall of thin stakes and stiff rows on a board whose edge is R + a0·cos nθ; its foot is a hinge. */
function ovalNet(n: number, weaverThickness: number): Net {
  const plan = planSchema.parse({
    format: 'girthline',
    version: 1,
    name: 'Nearly round',
    base: {
      kind: 'board',
      shape: 'round',
      length: 2 * radius,
      thickness: 5,
      ends,
      stake: { section: 'flat', width: 6, thickness: 1 },
      slot: 5,
      upsett: 'creased',
    },
    bands: [
      {
        rows,
        weave: 'rounds',
        weaver: { section: 'flat', width: pitch, thickness: weaverThickness },
        packing: 1,
      },
    ],
    girthLine: { points: [{ row: rows, girth: 2 * Math.PI * radius }] },
  });
  const net = netOf(plan);
  const start = Float64Array.from(net.start);
  for (let node = 0; node < net.nodeCount; node++) {
    const [x = 0, y = 0] = start.subarray(3 * node, 3 * node + 2);
    const from = Math.hypot(x, y);
    if (from < 1) continue;
    const angle = Math.atan2(y, x);
    const out = from + a0 * Math.cos(n * angle);
    const turned = angle - (a0 / (n * radius)) * Math.sin(n * angle);
    start[3 * node] = out * Math.cos(turned);
    start[3 * node + 1] = out * Math.sin(turned);
  }
  // No cells, and so no racking: the theory has none. The hinge is a fold without stiffness.
  const stakes = net.stakes.map((stake) => {
    const stiffness = Float64Array.from(stake.stiffness);
    for (const at of stake.edge) if (at >= 0) stiffness[at] = 0;
    return { ...stake, stiffness };
  });
  const none = { quads: new Int32Array(0), diagonals: new Float64Array(0) };
  return { ...net, ...none, cells: new Float64Array(0), start, stakes };
}

/** a/a0 by row: the part of the ends' way outward that goes as cos nθ, θ where the ends stood evenly. */
function amplitudes(net: Net, n: number): number[] {
  const own = work(net, 0);
  const angles = evenAngles(ends);
  expect(settle(own).converged).toBe(true);
  return net.rows.map(({ nodes }) => {
    let sum = 0;
    nodes.forEach((node, e) => {
      const [x = 0, y = 0] = own.x.subarray(3 * node, 3 * node + 2);
      const angle = angles[e] ?? 0;
      sum += (x * Math.cos(angle) + y * Math.sin(angle)) * Math.cos(n * angle);
    });
    return (2 * sum) / nodes.length / a0;
  });
}

for (const [n, thickness] of [
  [2, 3.6],
  [4, 1.3],
] as const) {
  test(`above a board, over a hinged foot, an outline of a·cos ${n}θ dies away as e^(−bz)·cos bz`, () => {
    const net = ovalNet(n, thickness);
    const found = amplitudes(net, n);
    const stake = 6 / 12;
    const weaver = net.rows[1]?.stiffness ?? 0;
    const spacing = (2 * Math.PI * radius) / ends;
    const b4 =
      ((n * n - 1) ** 2 * weaver * spacing) / (4 * pitch * radius ** 4 * stake * (1 + 1 / (n * n)));
    const b = b4 ** 0.25;
    const theory = (z: number) => Math.exp(-b * z) * Math.cos(b * z);
    found.slice(1).forEach((share, index) => {
      expect(Math.abs(share - theory(pitch * (index + 0.5)))).toBeLessThan(0.05);
    });
    // The first round row, and how far the wall goes oval the other way above it.
    const k = found.findIndex((share) => share < 0);
    const [above = 0, below = 0] = [found[k - 1], found[k]];
    const zero = pitch * (k - 1.5 + above / (above - below));
    expect(off(zero, Math.PI / (2 * b))).toBeLessThan(0.05);
    expect(Math.min(...found)).toBeCloseTo(Math.exp(-0.75 * Math.PI) * Math.cos(0.75 * Math.PI), 2);
  });
}
