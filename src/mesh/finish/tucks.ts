import { drawnWords } from '#words/drawn.ts';
import { partWords } from '#words/parts.ts';
import type { Basket } from '../../model/basket.ts';
import type { Strand as Stock } from '../../model/net/net.ts';
import { strandColour } from '../../plan/dyes.ts';
import type { Strand } from '../strandMesh.ts';
import { weaverIsOutside } from '../weave.ts';
import type { RimLine } from './rimLine.ts';
import type { Place } from './strandAlong.ts';
import { strandAlong } from './strandAlong.ts';
import type { Vector } from './vector.ts';
import { plus, scaled, unit } from './vector.ts';

/** Free between a stake and the row that it is bent over, mm. */
const free = 0.1;

/**
 * Stakes that stand outside the last row are bent in over it and tucked down the inside; the others are
 * cut off level with it.
 *
 * @param kept tells the ends that may be tucked
 * @param names what the stakes are called
 */
export function tucks(
  { net, plan }: Basket,
  line: RimLine,
  kept: (end: number) => boolean,
  names: readonly string[],
): Strand[] {
  const row = net.rows.length - 1;
  const band = plan.bands.at(-1);
  if (!band) return [];
  const { thickness } = plan.base.stake;
  const pitch = net.rows[row]?.pitch ?? 0;
  const over = (thickness + band.weaver.thickness) / 2;
  const within = 2 * over + line.hollow;
  return net.ends.flatMap((own, end) => {
    if (weaverIsOutside(band.weave, row, end, net.ends.length) || !kept(end)) return [];
    const { at, out, up } = line.place(end);
    const inside = scaled(out, -1);
    const place = (inward: number, high: number, face: Vector, thick = 1): Place => ({
      at: plus(plus(at, out, -inward), up, high),
      face,
      thick,
    });
    const places = [
      place(0, -0.2, out),
      place(0.3 * over, 0.45 * thickness + free, unit(plus(out, up))),
      place(over, 0.6 * thickness + free, up),
      place(1.7 * over, 0.45 * thickness + free, unit(plus(inside, up))),
      place(within, -0.2, inside),
      place(within, -0.9 * pitch, inside, 0.8),
      place(within, -1.6 * pitch, inside, 0.3),
    ];
    const name = drawnWords.tuck(end + 1, names[own.stake] ?? partWords.stakes.stake);
    const stock: Stock = { ...plan.base.stake, width: 0.92 * own.width };
    const colour = strandColour('natural');
    return [strandAlong(places, { name, stock, colour, seed: 17 + own.stake, between: 0 })];
  });
}
