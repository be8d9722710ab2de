/**
 * No strand passes through another, base, wall, rim and handle included: the middle line of one never comes inside
 * another, and no surface lies deeper than a hair under the surface of another, or of another part of the same
 * strand. What is left (mm): a lash where it slants round a leg of the trug's handle 0.14, a stake beside the folded
 * halves of the jar's split one 0.11, and at most half a dozen places of a basket between 0.05 and 0.1.
 */
import { expect, test } from 'vitest';
import { basketStrands } from '../../src/mesh/basketStrands.ts';
import { stride } from '../../src/mesh/crossings.ts';
import { settleBasket } from '../../src/model/settleBasket.ts';
import { demos } from '../../src/plan/demo/demos.ts';
import type { Overlap } from './clearances.ts';
import { overlaps, piercings } from './clearances.ts';

/** How far a middle line may lie inside another strand, mm. */
const hair = 0.02;
/** How far a surface may lie under another surface, mm, and in how many places of a basket at most. */
const pressed = { everywhere: 0.05, somewhere: 0.15, places: 6 };

test.each(demos)('no strand of the $title passes through another', ({ plan }) => {
  const strands = Object.values(basketStrands(settleBasket(plan))).flat();
  expect(strands.length).toBeGreaterThan(20);
  // a stake and its own tuck are one
  const others = ({ one, other }: Overlap) =>
    !one.endsWith(`, ${other}`) && !other.endsWith(`, ${one}`);
  expect(piercings(strands).filter((pair) => others(pair) && pair.depth > hair)).toEqual([]);
  const shared = overlaps(strands).filter(others);
  expect(shared.filter(({ depth }) => depth > pressed.somewhere)).toEqual([]);
  expect(shared.filter(({ depth }) => depth > pressed.everywhere).length).toBeLessThanOrEqual(
    pressed.places,
  );
});

test('two strands that cross at one height are found to pass through each other', () => {
  const [stake] = basketStrands(settleBasket(demos[0].plan)).stakes;
  if (!stake) throw new Error('there is no stake');
  // the same stake again, three millimetres further on: nearly all of it lies in the first
  const data = Float64Array.from(stake.path.data);
  for (let at = 0; at < stake.path.count; at += 1) data[at * stride] = (data[at * stride] ?? 0) + 3;
  const moved = { ...stake, name: 'moved', path: { ...stake.path, data } };
  const [pierced] = piercings([stake, moved]);
  expect(pierced?.depth).toBeGreaterThan(hair);
  expect(overlaps([stake, moved])[0]?.depth).toBeGreaterThan(hair);
});
