/** The rim: a hoop outside and one inside, the filler between them, the lashing, the tucked stakes. */
import { partWords } from '#words/parts.ts';
import type { Basket } from '../../model/basket.ts';
import type { Strand as Stock } from '../../model/net/net.ts';
import { rimOverWall } from '../../model/quantity/heightWithRim.ts';
import { caneThickness } from '../../plan/strandSizes.ts';
import type { Strand } from '../strandMesh.ts';
import { fillerStrand } from './filler.ts';
import { hoopStrand } from './hoop.ts';
import type { InTheWay } from './inTheWay.ts';
import { lashing } from './lashing.ts';
import type { RimLine } from './rimLine.ts';
import { tucks } from './tucks.ts';

/** Where the parts of a rim lie: from the middle of the wall outward, and from its top upward, mm. */
export interface RimSizes {
  readonly outside: number;
  readonly inside: number;
  readonly hoopTop: number;
  readonly hoopBottom: number;
  readonly top: number;
}

/** Sizes of the rim of a basket, outer faces of its hoops and what stands highest. */
export function rimSizes({ plan }: Basket, { half, bulge, hollow }: RimLine): RimSizes {
  const { hoop } = plan.rim;
  const folded = plan.base.stake.thickness;
  const { hoops: hoopTop, top } = rimOverWall(plan);
  return {
    outside: half + bulge + 0.1 + hoop.thickness,
    // between wall and inside hoop lie the tucked stakes, which are flat where the hoop is round
    inside: half + hollow + folded + 0.2 + hoop.thickness,
    hoopTop,
    hoopBottom: hoopTop - hoop.width,
    top,
  };
}

/**
 * All strands of the rim.
 *
 * @param kept tells the ends that may be tucked
 * @param names what the stakes are called
 * @param inTheWay what the lashing goes round
 */
export function rimStrands(
  basket: Basket,
  line: RimLine,
  kept: (end: number) => boolean,
  names: readonly string[],
  inTheWay: readonly InTheWay[],
): Strand[] {
  const { plan } = basket;
  const sizes = rimSizes(basket, line);
  const { hoop, filler, lasher } = plan.rim;
  const cane: Stock = {
    section: 'flat-oval',
    width: lasher.width,
    thickness: caneThickness(lasher.width),
  };
  return [
    hoopStrand(partWords.outsideHoop, plan, line, sizes, 1),
    hoopStrand(partWords.insideHoop, plan, line, sizes, -1),
    ...tucks(basket, line, kept, names),
    ...(filler ? [fillerStrand(plan, line, sizes, inTheWay)] : []),
    lashing(basket, line, sizes, cane, inTheWay),
  ].filter(({ path }) => path.count > 1 && hoop.width > 0);
}
