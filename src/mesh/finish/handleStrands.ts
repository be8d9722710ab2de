/** The handle: ears and a swinging bow, or a fixed bow with its legs in the wall; and its wrap. */
import { drawnWords } from '#words/drawn.ts';
import { partWords } from '#words/parts.ts';
import type { Basket } from '../../model/basket.ts';
import type { Strand as Stock } from '../../model/net/net.ts';
import { strandColour } from '../../plan/dyes.ts';
import type { Plan } from '../../plan/schema.ts';
import type { Strand } from '../strandMesh.ts';
import { archPlaces } from './arch.ts';
import type { Swing } from './ear.ts';
import { earStrand, earWidth, shoulder } from './ear.ts';
import type { InTheWay } from './inTheWay.ts';
import type { RimLine } from './rimLine.ts';
import { crossingOf } from './rimLine.ts';
import type { RimSizes } from './rimStrands.ts';
import type { Place } from './strandAlong.ts';
import { strandAlong } from './strandAlong.ts';
import type { Vector } from './vector.ts';
import { plus, unit } from './vector.ts';
import { wrapStrand } from './wrap.ts';

type Handle = Exclude<Plan['handle'], { readonly kind: 'none' }>;

/** Where a handle meets the rim, and how far its legs reach to either side, in ends. */
export interface HandleFeet {
  readonly ends: readonly [number, number];
  readonly reach: number;
  /** What of it stands through the rim. */
  readonly legs: readonly InTheWay[];
}

/** Feet of the plan's handle: in the middle of the two sides that it spans, or null for no handle. */
export function handleFeet({ plan }: Basket, line: RimLine): HandleFeet | null {
  const { handle } = plan;
  if (handle.kind === 'none') return null;
  const axis = handle.kind === 'fixed' && handle.across === 'length' ? 'x' : 'y';
  const inEnds = (mm: number) => (mm * line.ends) / line.length;
  const [half, aside] =
    handle.kind === 'swing'
      ? [earWidth(handle) / 2, handle.ear.spread / 2]
      : [handle.bow.width / 2, 0];
  const ends = [crossingOf(line, axis, -1), crossingOf(line, axis, 1)] as const;
  const legs = ends.flatMap((end) =>
    (aside > 0 ? [-aside, aside] : [0]).map((off) => ({
      end: end + inEnds(off),
      half: inEnds(half),
    })),
  );
  return { ends, reach: inEnds(half + aside), legs };
}

export interface HandleFrame {
  /** Of a handle that swings. */
  readonly ears: readonly Strand[];
  readonly bow: Strand;
  /** The first and the last place of the bow that is wrapped. */
  readonly arched: readonly [number, number];
}

/** All strands of the handle. */
export function handleStrands(
  basket: Basket,
  line: RimLine,
  sizes: RimSizes,
  feet: HandleFeet,
): Strand[] {
  const { handle } = basket.plan;
  if (handle.kind === 'none') return [];
  const { ears, bow, arched } = handleFrame(basket, handle, line, sizes, feet);
  return [...ears, bow, wrapStrand(bow, ...arched, handle.wrap.width)];
}

/** What of a handle is bent of wood. */
export function handleFrame(
  basket: Basket,
  handle: Handle,
  line: RimLine,
  sizes: RimSizes,
  feet: HandleFeet,
): HandleFrame {
  const stock: Stock = { section: 'flat', ...handle.bow };
  const folded = basket.plan.base.stake.thickness;
  const [near, far] = feet.ends.map((end) =>
    handle.kind === 'swing'
      ? hook(line, sizes, handle, folded, end)
      : leg(line, sizes, handle, folded, end),
  ) as [Foot, Foot];
  const rim = feet.ends.reduce((sum, end) => sum + line.place(end).at[2] / 2, 0);
  const rise = rim + handle.rise - (near.from[2] + far.from[2]) / 2;
  const arch = archPlaces(near.from, far.from, Math.max(10, rise));
  const places: Place[] = [...near.places, ...arch, ...far.places.toReversed()];
  const colour = strandColour('honey');
  const bow = strandAlong(places, { name: partWords.handleBow, stock, colour, seed: 90 });
  const first = near.places.length + 1;
  const arched = [first, first + arch.length - 3] as const;
  if (handle.kind !== 'swing') return { ears: [], bow, arched };
  const ears = feet.ends.map((end, side) =>
    earStrand(drawnWords.ear(side + 1), line, sizes, handle, folded, end),
  );
  return { ears, bow, arched };
}

/** What of the bow lies before its arch: from the tip on, and where the arch begins. */
interface Foot {
  readonly places: readonly Place[];
  readonly from: Vector;
}

/** The end of a swinging bow: through its ear from the outside and up on the inside. */
function hook(line: RimLine, sizes: RimSizes, handle: Swing, folded: number, end: number): Foot {
  const { at, out, up } = line.place(end);
  const level = unit([out[0], out[1], 0]);
  const { thickness, width } = handle.bow;
  // narrowed to fit under the round of the ear
  const opening = (handle.ear.spread - earWidth(handle)) / 2;
  const wide = Math.min(1, (1.4 * opening) / width);
  const headroom = Math.sqrt(opening ** 2 - ((wide * width) / 2) ** 2);
  const high = sizes.top + 3 + headroom - thickness / 2 - 0.6;
  const hole = plus(
    plus(at, out, -(line.half + folded / 2 + shoulder(handle.bow, folded))),
    up,
    high,
  );
  // the face that looks out of the basket on the bow's leg goes on inside the hook, up to the ear at its foot
  const place = (outward: number, rise: number, faceOut: number, faceUp: number): Place => ({
    at: plus(plus(hole, level, outward), [0, 0, rise]),
    face: unit([level[0] * faceOut, level[1] * faceOut, faceUp]),
    wide,
  });
  return {
    places: [
      place(11, 26, -1, 0),
      place(11, 9, -1, 0),
      place(8, 2.5, -0.7, 0.7),
      place(0, 0, 0, 1),
      place(-7, 2.5, 0.7, 0.7),
    ],
    from: plus(plus(hole, level, -10), [0, 0, 10]),
  };
}

/** The leg of a fixed bow: thinned, down the inside of the wall behind the inside hoop to the base. */
function leg(line: RimLine, sizes: RimSizes, { bow }: Handle, folded: number, end: number): Foot {
  const thin = Math.min(1, folded / bow.thickness);
  const inward = line.widest + folded / 2;
  const below = [0.95, 0.8, 0.6, 0.4, 0.2].map((share, tip): Place => {
    const { at, out } = line.under(end, share * line.wall);
    // pointed, so that the tip finds its way behind the first rows
    const [thick, wide] = tip === 0 ? [0.4 * thin, 0.6] : [thin, 0.9];
    return { at: plus(at, out, -inward), face: out, thick, wide };
  });
  const { at, out, up } = line.place(end);
  const over = (high: number): Place => ({
    at: plus(plus(at, out, -(line.half + folded / 2)), up, high),
    face: out,
    thick: thin,
  });
  return {
    places: [...below, over(sizes.hoopBottom), over(sizes.top)],
    from: plus(over(sizes.top + 6).at, out, -shoulder(bow, folded)),
  };
}
