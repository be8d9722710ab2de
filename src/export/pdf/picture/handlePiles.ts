/** The handle as painted, from the strands that the stage draws: its ears, its bow, and the wrap on it. */
import { partWords } from '#words/parts.ts';
import { handleFeet, handleStrands } from '../../../mesh/finish/handleStrands.ts';
import { rimLine } from '../../../mesh/finish/rimLine.ts';
import { rimSizes } from '../../../mesh/finish/rimStrands.ts';
import { nodeNormals } from '../../../mesh/surface.ts';
import type { Basket } from '../../../model/basket.ts';
import type { Camera, Vector } from './camera.ts';
import type { Pile } from './ribbon.ts';
import { standing } from './rimPiles.ts';
import { spotsOf, strandPiles } from './strandPiles.ts';

/** Pieces from one place of a strand to the next; a wrap has places enough. */
const pieces = 4;

/** All piles of the handle; none where the plan has none. */
export function handlePiles(basket: Basket, camera: Camera): Pile[] {
  const line = rimLine(basket, nodeNormals(basket.net, basket.positions));
  const feet = handleFeet(basket, line);
  if (!feet) return [];
  const {
    handle,
    rim: { hoop },
  } = basket.plan;
  const rims = feet.ends.map((end) => line.place(end).at);
  const top = standing * hoop.width;
  /** How far over the wall's top a place is, at the nearer foot, mm. */
  const overRim = (at: Vector) => {
    const [one = 0, other = 0] = rims.map((rim) => Math.hypot(at[0] - rim[0], at[1] - rim[1]));
    return at[2] - (rims[one < other ? 0 : 1]?.[2] ?? 0);
  };
  const strands = handleStrands(basket, line, rimSizes(basket, line), feet);
  const wrap = strands.find(({ name }) => name === partWords.handleWrap);
  const wound = wrap ? spotsOf(wrap, 1) : [];
  const reach = 0.6 * (handle.kind === 'none' ? 0 : handle.bow.width);
  const isWound = ([x, y, z]: Vector) =>
    wound.some(({ at }) => Math.hypot(at[0] - x, at[1] - y, at[2] - z) < reach);
  return strands.flatMap((strand) => {
    const { colour } = strand;
    if (strand === wrap) {
      // the far side of a wrap is hidden by the bow that it goes round
      return strandPiles(wound, camera, (_, facing) =>
        facing > 0.05 ? { colour, light: 0.98, before: 3 } : null,
      );
    }
    return strandPiles(spotsOf(strand, pieces), camera, (place, facing) => {
      const high = overRim(place);
      if (high > top) {
        // under a wrap nothing of the bow shows
        return { colour: wrap && isWound(place) ? wrap.colour : colour, light: 1, before: 0 };
      }
      // legs lie on the inside of the wall, behind the inside hoop; a leg's face looks out of the basket
      const isBehindHoop = high > top - hoop.width;
      return facing > 0 || isBehindHoop ? null : { colour, light: 0.74, before: 4 };
    });
  });
}
