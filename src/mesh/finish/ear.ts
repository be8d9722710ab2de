/** An ear: a loop over the rim for the bow to swing in, its legs tucked down the inside of the wall. */
import type { Strand as Stock } from '../../model/net/net.ts';
import { strandColour } from '../../plan/dyes.ts';
import type { Plan } from '../../plan/schema.ts';
import type { Strand } from '../strandMesh.ts';
import type { RimLine } from './rimLine.ts';
import { along } from './rimLine.ts';
import type { RimSizes } from './rimStrands.ts';
import type { Place } from './strandAlong.ts';
import { strandAlong } from './strandAlong.ts';
import { plus } from './vector.ts';

export type Swing = Extract<Plan['handle'], { readonly kind: 'swing' }>;

/** Pieces of the loop. */
const pieces = 10;

/** Width of an ear: the bow's, or what leaves the bow room between the legs, mm. */
export function earWidth({ bow, ear }: Swing): number {
  return Math.max(2, Math.min(bow.width, 0.3 * ear.spread));
}

/**
 * How far further in the middle of a whole strand lies than that of its thinned leg, mm: it is thinned
 * from the inside, so that its outer face goes straight up past what lies on the wall.
 */
export function shoulder({ thickness }: Swing['bow'], folded: number): number {
  return Math.max(0, thickness - folded) / 2;
}

/** One ear at `end`, flat against the wall; thinned where it passes behind the inside hoop. */
export function earStrand(
  name: string,
  line: RimLine,
  sizes: RimSizes,
  handle: Swing,
  folded: number,
  end: number,
): Strand {
  const { ear, bow } = handle;
  const stock: Stock = { section: 'flat', width: earWidth(handle), thickness: bow.thickness };
  const thin = Math.min(1, folded / bow.thickness);
  const inward = line.half + folded / 2 + 0.1;
  const radius = ear.spread / 2;
  const middle = sizes.top + 3;
  const aside = (radius * line.ends) / line.length;
  const deep = Math.max(8, Math.min(ear.height - middle - radius, 0.9 * line.wall));
  const legs = (side: 1 | -1): Place[] => {
    const below = [deep, 0.6 * deep].map((down, at): Place => {
      const { at: place, out } = line.under(end + side * aside, down);
      const thick = thin * (at === 0 ? 0.4 : 1);
      return { at: plus(place, out, -(line.widest + folded / 2 + 0.45)), face: out, thick };
    });
    const { at: top, out, up } = line.place(end + side * aside);
    const over = (high: number): Place => ({
      at: plus(plus(top, out, -inward), up, high),
      face: out,
      thick: thin,
    });
    return [...below, over(sizes.hoopBottom), over(sizes.top - 0.5)];
  };
  const place = line.place(end);
  const way = along(place);
  const loop = Array.from({ length: pieces + 1 }, (_, step): Place => {
    const angle = (Math.PI * step) / pieces;
    const foot = plus(place.at, place.out, -inward - shoulder(bow, folded));
    const centre = plus(foot, place.up, middle + radius * Math.sin(angle));
    return { at: plus(centre, way, -radius * Math.cos(angle)), face: place.out };
  });
  const places = [...legs(-1), ...loop, ...legs(1).toReversed()];
  return strandAlong(places, { name, stock, colour: strandColour('honey'), seed: 84 });
}
