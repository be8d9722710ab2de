/**
 * No strand passes through another, lashing, wrap and handle included: the middle line of one never comes
 * inside another by more than a hair. Surfaces may share a little, as soaked strands do that are pressed on
 * each other. At most that is (mm): trug 0.27, pot 0.38, tray 0.67, jar 0.51, bowl 0.17, loaf
 * basket 0.53; the deepest at the corners of the base and in the first two rows over them, where stakes turn
 * up, and where stakes are laid in between others.
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
/** The same for all that rim and handle are made of. */
const pressedOnRim = 0.3;

test.each(demos)('no strand of the $title passes through another', ({ plan }) => {
  const drawn = basketStrands(settleBasket(plan));
  const strands = Object.values(drawn).flat();
  expect(strands.length).toBeGreaterThan(20);
  const pierced = piercings(strands).filter(
    // a stake and its own tuck are one
    ({ one, other }) => !one.endsWith(`, ${other}`) && !other.endsWith(`, ${one}`),
  );
  expect(pierced.filter(({ depth }) => depth > hair)).toEqual([]);
  const shared = overlaps(strands).filter(
    ({ one, other }) => !one.endsWith(`, ${other}`) && !other.endsWith(`, ${one}`),
  );
  expect(shared.filter(({ depth }) => depth > pressed)).toEqual([]);
  const finish = new Set(drawn.finish.map(({ name }) => name));
  expect(
    shared.filter(
      ({ one, other, depth }) => (finish.has(one) || finish.has(other)) && depth > pressedOnRim,
    ),
  ).toEqual([]);
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
