/** Bases at random: mats, wheels, ovals and boards, small enough that thousands of them can be settled. */
import fc from 'fast-check';
import { baseGirth, baseSize } from '../../../src/plan/baseSize.ts';
import { limits } from '../../../src/plan/limits.ts';
import type { Base, Strand } from '../../../src/plan/schema.ts';

/** Lengths to a tenth of a millimetre. */
export const tenths = (least: number, most: number) =>
  fc.integer({ min: Math.ceil(least * 10), max: Math.floor(most * 10) }).map((n) => n / 10);

/** A base of stakes of this kind; half of them are mats. Every one of them a document may hold. */
export function anyBase(stake: fc.Arbitrary<Strand>): fc.Arbitrary<Base> {
  const any = fc.oneof(
    { weight: 3, arbitrary: mat(stake) },
    { weight: 1, arbitrary: wheel(stake) },
    { weight: 1, arbitrary: oval(stake) },
    { weight: 1, arbitrary: board(stake) },
  );
  // a few thin strands with no gaps between them are less than a document may hold
  return any.filter((base) => baseGirth(base) >= limits.girth.least);
}

const upsett = fc.constantFrom('rolled', 'creased');

/** Lift as a share of the shorter side. */
const lift = fc.constantFrom(0, 0, 0.05, 0.15, 0.3);

function mat(stake: fc.Arbitrary<Strand>): fc.Arbitrary<Base> {
  return fc
    .record({
      lengthwise: fc.integer({ min: 2, max: 4 }),
      crosswise: fc.integer({ min: 2, max: 5 }),
      stake,
      gaps: fc.record({ lengthwise: tenths(0, 14), crosswise: tenths(0, 14) }),
      corners: fc.record({
        kind: fc.constantFrom('pinned', 'fanned', 'square'),
        rows: fc.integer({ min: 0, max: 6 }),
        hold: fc.constantFrom(0, 0, 0.3, 0.7, 1),
        holdRows: fc.integer({ min: 0, max: 10 }),
      }),
      upsett,
      lift,
    })
    .map(({ corners, lift, ...made }) => {
      const rows = corners.kind === 'square' ? 0 : corners.rows;
      return lifted({ kind: 'mat', ...made, corners: { ...corners, rows } }, lift);
    });
}

function wheel(stake: fc.Arbitrary<Strand>): fc.Arbitrary<Base> {
  return fc
    .record({
      spokes: fc.integer({ min: 3, max: 8 }),
      stake,
      diameter: tenths(60, 160),
      hubShare: fc.constantFrom(0.1, 0.3, 0.6, 0.9),
      added: fc.option(
        fc.record({ ends: fc.integer({ min: 1, max: 9 }), at: fc.constantFrom(0, 0.5, 0.95) }),
      ),
      upsett,
      lift,
    })
    .map(({ hubShare, added, lift, ...made }) => {
      const hub = hubShare * made.diameter;
      const at = (share: number) => hub + share * (made.diameter - hub);
      const more = added ? { added: { ends: added.ends, at: at(added.at) } } : {};
      return lifted({ kind: 'wheel', ...made, hub, ...more }, lift);
    });
}

function oval(stake: fc.Arbitrary<Strand>): fc.Arbitrary<Base> {
  return fc
    .record({
      lengthwise: fc.integer({ min: 2, max: 4 }),
      crosswise: fc.integer({ min: 2, max: 5 }),
      stake,
      gap: tenths(0, 14),
      border: tenths(6, 30),
      fanned: fc.integer({ min: 0, max: 2 }),
      upsett,
      lift,
    })
    .map(({ lift, ...made }) => lifted({ kind: 'oval', ...made }, lift));
}

function board(stake: fc.Arbitrary<Strand>): fc.Arbitrary<Base> {
  const common = {
    kind: fc.constant('board' as const),
    thickness: tenths(4, 12),
    ends: fc.integer({ min: 8, max: 24 }),
    stake,
    slot: tenths(0, 10),
    upsett,
    length: tenths(70, 160),
  };
  return fc.oneof(
    fc.record({ ...common, shape: fc.constant('round' as const) }),
    fc.record({ ...common, shape: fc.constant('rectangle' as const), width: tenths(60, 120) }),
  ) as fc.Arbitrary<Base>;
}

/** `base` with its middle pushed in by a share of its shorter side, mm. */
function lifted(base: object, share: number): Base {
  const flat = { ...base, centreLift: 0 } as Base;
  const { length, width } = baseSize(flat);
  return { ...flat, centreLift: share * Math.min(length, width) } as Base;
}
