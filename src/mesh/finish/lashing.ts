import { drawnWords } from '#words/drawn.ts';
import type { Basket } from '../../model/basket.ts';
import type { Strand as Stock } from '../../model/net/net.ts';
import { strandColour } from '../../plan/dyes.ts';
import type { Strand } from '../strandMesh.ts';
import { isSpiral } from '../weave.ts';
import type { RimLine } from './rimLine.ts';
import type { RimSizes } from './rimStrands.ts';
import type { Place } from './strandAlong.ts';
import { strandAlong } from './strandAlong.ts';
import { plus, scaled, unit } from './vector.ts';

/**
 * The lashing: in each gap once round the rim, through the wall between two rows under the hoops, and on to
 * the next gap down the outside.
 */
export function lashing(basket: Basket, line: RimLine, sizes: RimSizes, stock: Stock): Strand {
  const thick = stock.thickness / 2;
  const [outside, inside] = [sizes.outside + thick, sizes.inside + thick];
  const top = sizes.top + thick;
  const places: Place[] = [];
  const turn = (end: number, out: number, up: number, faceOut: number, faceUp: number) => {
    const place = line.place(end);
    const face = unit(plus(scaled(place.out, faceOut), place.up, faceUp));
    places.push({ at: plus(plus(place.at, place.out, out), place.up, up), face });
  };
  const through = (end: number, out: number) => {
    const {
      at,
      out: outward,
      up,
    } = line.under(end, seam(basket, line, end, thick - sizes.hoopBottom));
    const face = unit(plus(scaled(outward, 0.6 * Math.sign(out)), up, -1));
    places.push({ at: plus(at, outward, out), face });
  };
  for (let gap = 0; gap < line.ends; gap += 1) {
    const [here, next] = [gap + 0.5, gap + 1.5];
    turn(here, -inside, sizes.hoopBottom + 2, -1, 0);
    turn(here, -inside, sizes.hoopTop - 1, -1, 0);
    turn(here, -0.7 * inside, top - 0.4, -0.7, 1);
    turn(here, 0, top, 0, 1);
    turn(here, 0.7 * outside, top - 0.4, 0.7, 1);
    for (const share of [0, 0.25, 0.5, 0.75, 1]) {
      const up = sizes.hoopTop - 1 + share * (sizes.hoopBottom + 2 - sizes.hoopTop);
      turn(here + 0.06 + 0.88 * share, outside, up, 1, 0);
    }
    through(next, 0.5 * outside);
    through(next, -0.5 * inside);
  }
  const colour = strandColour('bleached');
  return strandAlong(places, { name: drawnWords.lashing, stock, colour, seed: 80, between: 0 });
}

/** How far under the wall's top two rows meet at `end`, at least `least` down, mm. */
function seam({ plan, net }: Basket, line: RimLine, end: number, least: number): number {
  const pitch = net.rows.at(-1)?.pitch ?? 0;
  const band = plan.bands.at(-1);
  if (!band || !(pitch > 0)) return least;
  // rows of a spiral lie higher from end to end, by a row in a turn
  const start = isSpiral(band.weave) ? 0.5 - (end % line.ends) / line.ends : 0;
  return (Math.ceil(least / pitch - start) + start) * pitch;
}
