import { partWords } from '#words/parts.ts';
import type { Strand as Stock } from '../../model/net/net.ts';
import { fillerThickness } from '../../model/quantity/rimParts.ts';
import { strandColour } from '../../plan/dyes.ts';
import type { Plan } from '../../plan/schema.ts';
import type { Strand } from '../strandMesh.ts';
import type { InTheWay } from './inTheWay.ts';
import { apart } from './inTheWay.ts';
import type { RimLine } from './rimLine.ts';
import type { RimSizes } from './rimStrands.ts';
import type { Place } from './strandAlong.ts';
import { strandAlong } from './strandAlong.ts';
import { plus } from './vector.ts';

/** Free between filler and hoops, mm: they are drawn in straight pieces. */
const free = 0.1;

/** A round filler on the top of the wall, between the hoops; beside a leg of the handle it is squeezed. */
export function fillerStrand(
  { base }: Plan,
  line: RimLine,
  sizes: RimSizes,
  inTheWay: readonly InTheWay[],
): Strand {
  const radius = fillerThickness / 2;
  const middle = -base.stake.thickness / 2;
  // legs pass on the inside of the wall: what is left outward of them
  const squeezed = Math.min(fillerThickness, middle + radius + line.half) - free;
  const places = Array.from({ length: line.ends }, (_, end): Place => {
    const { at, out, up } = line.place(end);
    const isBeside = inTheWay.some(
      (leg) => Math.abs(apart(end, leg.end, line.ends)) < leg.half + 1,
    );
    const thick = isBeside ? squeezed : fillerThickness - free;
    const aside = middle + radius - (thick + free) / 2;
    return {
      at: plus(plus(at, up, sizes.top - radius + free / 2), out, aside),
      face: out,
      thick: thick / fillerThickness,
      wide: 1 - free / fillerThickness,
    };
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
