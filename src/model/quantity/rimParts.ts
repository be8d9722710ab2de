/** The rim: two hoops, the filler between them, and the lashing that holds them. */

import { partWords } from '#words/parts.ts';
import { quantityWords } from '#words/quantities.ts';
import { caneThickness } from '../../plan/strandSizes.ts';
import type { Measured } from '../basket.ts';
import { halfWall } from '../read/wallThickness.ts';
import { lasherLength } from './lasher.ts';
import type { Part, Stock } from './part.ts';
import { undyed } from './stock.ts';

/** The rim's parts as it takes them, not yet rounded; and how far each hoop end is thinned. */
export interface RimNeed {
  readonly parts: readonly Omit<Part, 'length'>[];
  readonly lap: number;
  readonly thinned: number;
  readonly lashes: number;
}

/** Hoop ends are thinned over 3 in, or the whole lap where it is less. Common practice, no source. */
const thinnedLap = 76.2;

/** Round filler, mm: reed #6 (4.25–4.75 mm) lies between the hoops in a pattern of the trade. */
export const fillerThickness = 4.5;

/**
 * A hoop is as long as its middle line, half its thickness off the wall's face: outside by what the
 * tape reads there, inside by the girth of the inner face; and its lap. (Trade: the inside one comes
 * out about 2 in shorter.)
 */
export function rimNeed({ plan, net, rows }: Measured): RimNeed {
  const last = rows.at(-1);
  if (!last) throw new RangeError('rows are none, allowed 1 and more');
  const { hoop, lap, filler, lasher } = plan.rim;
  const stock: Stock = { ...hoop, colour: undyed };
  const use = quantityWords.hoops;
  const round = Math.PI * hoop.thickness;
  const inner = last.girthReached - 2 * Math.PI * halfWall(plan, last.row);
  const parts: Omit<Part, 'length'>[] = [
    { part: partWords.outsideHoop, use, count: 1, needed: last.tapeGirth + round + lap, stock },
    { part: partWords.insideHoop, use, count: 1, needed: Math.max(0, inner - round) + lap, stock },
  ];
  if (filler) {
    const reed: Stock = {
      section: 'round',
      width: fillerThickness,
      thickness: fillerThickness,
      colour: undyed,
    };
    parts.push({ part: partWords.rimFiller, count: 1, needed: last.tapeGirth, stock: reed });
  }
  const lashes = net.ends.length;
  const band = plan.bands.at(-1);
  const wall = plan.base.stake.thickness + (band?.weaver.thickness ?? 0);
  const bundle = 2 * (hoop.width + (filler ? fillerThickness : 0) + wall + 2 * hoop.thickness);
  const cane: Stock = {
    section: 'cane',
    width: lasher.width,
    thickness: caneThickness(lasher.width),
    colour: undyed,
  };
  parts.push({
    part: partWords.lasher,
    count: 1,
    needed: lasherLength(lashes, last.tapeGirth, bundle),
    stock: cane,
  });
  return { parts, lap, thinned: Math.min(lap, thinnedLap), lashes };
}
