/** The rim: a hoop outside and one inside, the filler between them, the lashing, the tucked stakes. */
import { partWords } from '#words/parts.ts';
import type { Basket } from '../../model/basket.ts';
import type { Strand as Stock } from '../../model/net/net.ts';
import { rimOverWall } from '../../model/quantity/heightWithRim.ts';
import { fillerThickness } from '../../model/quantity/rimParts.ts';
import { strandColour } from '../../plan/dyes.ts';
import { caneThickness } from '../../plan/strandSizes.ts';
import type { Strand } from '../strandMesh.ts';
import { lashing } from './lashing.ts';
import type { RimLine } from './rimLine.ts';
import type { Place } from './strandAlong.ts';
import { strandAlong } from './strandAlong.ts';
import { tucks } from './tucks.ts';
import { plus, scaled } from './vector.ts';

/** Where the parts of a rim lie: from the middle of the wall outward, and from its top upward, mm. */
export interface RimSizes {
  readonly outside: number;
  readonly inside: number;
  readonly hoopTop: number;
  readonly hoopBottom: number;
  readonly top: number;
}

/** Sizes of the rim of a basket, outer faces of its hoops and what stands highest. */
export function rimSizes({ plan }: Basket, { half, bulge }: RimLine): RimSizes {
  const { hoop } = plan.rim;
  const folded = plan.base.stake.thickness;
  const { hoops: hoopTop, top } = rimOverWall(plan);
  return {
    outside: half + bulge + hoop.thickness,
    // between wall and inside hoop lie the tucked stakes
    inside: half + folded + hoop.thickness,
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
 */
export function rimStrands(
  basket: Basket,
  line: RimLine,
  kept: (end: number) => boolean,
  names: readonly string[],
): Strand[] {
  const { plan } = basket;
  const sizes = rimSizes(basket, line);
  const { hoop, filler, lasher } = plan.rim;
  const cane: Stock = {
    section: 'flat-oval',
    width: lasher.width,
    thickness: caneThickness(lasher.width),
  };
  const opposite = 0.5 + Math.round(line.ends / 2);
  return [
    hoopStrand(partWords.outsideHoop, plan, line, sizes, 1, 0.5),
    hoopStrand(partWords.insideHoop, plan, line, sizes, -1, opposite),
    ...tucks(basket, line, kept, names),
    ...(filler ? [fillerStrand(basket, line)] : []),
    lashing(basket, line, sizes, cane),
  ].filter(({ path }) => path.count > 1 && hoop.width > 0);
}

/**
 * A hoop on one face of the wall. Its ends are thinned over the lap, one on the other, so that the lap
 * is as thick as the rest.
 */
function hoopStrand(
  name: string,
  { rim: { hoop, lap } }: Basket['plan'],
  line: RimLine,
  sizes: RimSizes,
  side: 1 | -1,
  start: number,
): Strand {
  const face = (side === 1 ? sizes.outside : sizes.inside) - hoop.thickness;
  const middle = (sizes.hoopTop + sizes.hoopBottom) / 2;
  const lapped = Math.max(0.01, Math.min((lap * line.ends) / line.length, 0.45 * line.ends));
  const last = line.ends + lapped;
  const count = Math.ceil(2 * last);
  const places = Array.from({ length: count + 1 }, (_, index): Place => {
    const from = (last * index) / count;
    const { at, out, up } = line.place(start + from);
    const lying = Math.min(1, Math.max(0.08, from / lapped));
    const over = Math.min(1, Math.max(0.08, (last - from) / lapped));
    // the beginning lies on the wall, the end on the beginning
    const isEnd = from > line.ends;
    const thick = isEnd ? over : lying;
    const off = face + hoop.thickness * ((isEnd ? 1 - over : 0) + thick / 2);
    return { at: plus(plus(at, up, middle), out, side * off), face: scaled(out, side), thick };
  });
  const colour = strandColour('natural');
  return strandAlong(places, { name, stock: hoop, colour, seed: 60 + side });
}

/** A round filler on the top of the wall, between the hoops. */
function fillerStrand({ plan }: Basket, line: RimLine): Strand {
  const { thickness } = plan.base.stake;
  const places = Array.from({ length: line.ends }, (_, end): Place => {
    const { at, out, up } = line.place(end);
    const high = 1.15 * thickness + fillerThickness / 2;
    return { at: plus(plus(at, up, high), out, -thickness / 2), face: out };
  });
  const stock: Stock = { section: 'round', width: fillerThickness, thickness: fillerThickness };
  const colour = strandColour('honey');
  return strandAlong(places, {
    name: partWords.rimFiller,
    stock,
    colour,
    seed: 70,
    closed: true,
    between: 2,
  });
}
