import { strandColour } from '../../plan/dyes.ts';
import type { Plan } from '../../plan/schema.ts';
import type { Strand } from '../strandMesh.ts';
import type { RimLine } from './rimLine.ts';
import type { RimSizes } from './rimStrands.ts';
import type { Place } from './strandAlong.ts';
import { strandAlong } from './strandAlong.ts';
import { plus, scaled } from './vector.ts';

/** Where the ends of a hoop lie over each other: from end `start` on, over `lapped` ends. */
export interface HoopLap {
  readonly start: number;
  readonly lapped: number;
}

/** The lap of the outside hoop (side 1), and that of the inside one opposite to it. */
export function hoopLap({ rim }: Plan, { ends, length }: RimLine, side: 1 | -1): HoopLap {
  return {
    start: side === 1 ? 0.5 : 0.5 + Math.round(ends / 2),
    lapped: Math.max(0.01, Math.min((rim.lap * ends) / length, 0.45 * ends)),
  };
}

/**
 * A hoop on one face of the wall. Its ends are thinned over the lap, one on the other, so that the lap
 * is as thick as the rest.
 */
export function hoopStrand(
  name: string,
  plan: Plan,
  line: RimLine,
  sizes: RimSizes,
  side: 1 | -1,
): Strand {
  const { hoop } = plan.rim;
  const { start, lapped } = hoopLap(plan, line, side);
  const face = (side === 1 ? sizes.outside : sizes.inside) - hoop.thickness;
  const middle = (sizes.hoopTop + sizes.hoopBottom) / 2;
  const last = line.ends + lapped;
  const count = Math.ceil(2 * last);
  const places = Array.from({ length: count + 1 }, (_, index): Place => {
    const from = (last * index) / count;
    const { at, out, up } = line.place(start + from);
    // over the lap, and to the next place on either side, the beginning lies on the wall and the end on the beginning
    const isEnd = from > line.ends - 0.6;
    const part = (isEnd ? from - line.ends : from) / lapped;
    const lying = isEnd || from < lapped + 0.6 ? Math.max(0, Math.min(0.9, 0.06 + 0.84 * part)) : 1;
    const thick = isEnd ? Math.min(1, 0.97 - lying) : lying;
    const off = face + hoop.thickness * (isEnd ? 1 - thick / 2 : thick / 2);
    return { at: plus(plus(at, up, middle), out, side * off), face: scaled(out, side), thick };
  });
  const colour = strandColour('natural');
  return strandAlong(places, { name, stock: hoop, colour, seed: 60 + side });
}
