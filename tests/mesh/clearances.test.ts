/**
 * No strand passes through another. Strands pressed on each other may share a little of their surfaces, as
 * soaked ones do; but the middle line of one never comes inside another by more than a hair.
 */
import { expect, test } from 'vitest';
import { basketStrands } from '../../src/mesh/basketStrands.ts';
import { stride } from '../../src/mesh/crossings.ts';
import { settleBasket } from '../../src/model/settleBasket.ts';
import { demos } from '../../src/plan/demo/demos.ts';
import { overlaps, piercings } from './clearances.ts';

/** How far a middle line may lie inside another strand, and a surface under another surface, mm. */
const hair = 0.12;
const pressed = 0.7;

test.each(demos)('no strand of the $title passes through another', ({ plan }) => {
  const strands = Object.values(basketStrands(settleBasket(plan))).flat();
  expect(strands.length).toBeGreaterThan(20);
  const pierced = piercings(strands).filter(
    // a stake and its own tuck are one
    ({ one, other }) => !one.endsWith(`, ${other}`) && !other.endsWith(`, ${one}`),
  );
  expect(pierced.filter(({ depth }) => depth > hair)).toEqual([]);
  // the lashing is drawn tight through the weave, and the wrap round its bow: they press as they like
  const loose = strands.filter(({ name }) => name !== 'lashing' && name !== 'handle wrap');
  const [deepest] = overlaps(loose);
  expect(deepest?.depth ?? 0).toBeLessThan(pressed);
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
