import { expect, test } from 'vitest';
import { basketStrands } from '../../src/mesh/basketStrands.ts';
import type { Strand } from '../../src/mesh/strandMesh.ts';
import { sweepStrands } from '../../src/mesh/sweepStrands.ts';
import { settleBasket } from '../../src/model/settleBasket.ts';
import { demos } from '../../src/plan/demo/demos.ts';

test.each(demos)('the rim of the $title stands as far over the wall as it is drawn', ({ plan }) => {
  const { summary, ...basket } = settleBasket({ ...plan, handle: { kind: 'none' } });
  const { finish, stakes } = basketStrands({ summary, ...basket });
  const drawn = top(finish) - top(stakes);
  expect(drawn).toBeGreaterThan(2);
  // drawn stakes have their thickness, up to half a millimetre over their line where they lean, and the
  // lashing stands highest in a gap, where the wall may be lower than at its highest stake
  expect(Math.abs(summary.heightWithRim - summary.height - drawn)).toBeLessThan(0.8);
});

/** The highest point of strands, mm. */
function top(strands: readonly Strand[]): number {
  const { positions } = sweepStrands(strands);
  return positions.reduce((most, z, at) => (at % 3 === 2 ? Math.max(most, z) : most), 0);
}
