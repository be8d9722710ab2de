import { drawnWords } from '#words/drawn.ts';
import type { Basket } from '../../model/basket.ts';
import type { Strand as Stock } from '../../model/net/net.ts';
import { strandColour } from '../../plan/dyes.ts';
import { weaveFacts } from '../../plan/weaveFacts.ts';
import type { FirstRows } from '../firstRows.ts';
import { firstRows } from '../firstRows.ts';
import type { Strand } from '../strandMesh.ts';
import type { HoopLap } from './hoop.ts';
import { hoopLap } from './hoop.ts';
import type { InTheWay } from './inTheWay.ts';
import { clearOf } from './inTheWay.ts';
import type { RimLine, RimPlace } from './rimLine.ts';
import type { Lapped, ProfilePlace } from './rimProfile.ts';
import { rimProfile } from './rimProfile.ts';
import type { RimSizes } from './rimStrands.ts';
import type { Place } from './strandAlong.ts';
import { strandAlong } from './strandAlong.ts';
import { plus, scaled, unit } from './vector.ts';

/** Places down the outside hoop are no farther from each other, mm. */
const longest = 4.5;
/** Free between rim and lashing, mm: it goes straight from place to place, and the rim is round. */
const free = 0.18;

/**
 * The lashing: in each gap once round the rim, through the wall between two rows under the hoops, and on to
 * the next gap down the outside. It lies on the rim's convex outline.
 */
export function lashing(
  basket: Basket,
  line: RimLine,
  sizes: RimSizes,
  stock: Stock,
  inTheWay: readonly InTheWay[],
): Strand {
  const off = stock.thickness / 2 + free;
  const profiles = lashProfiles(basket, line, sizes, off);
  const gap = line.length / line.ends;
  const aside = (0.5 * stock.width + 0.3) / gap;
  const places: Place[] = [];
  const lay = (
    { at: [out, high], face }: ProfilePlace,
    { at, out: outward, up }: RimPlace,
    more: number,
  ) => {
    places.push({
      at: plus(plus(at, outward, out + more * face[0]), up, high + more * face[1]),
      face: unit(plus(scaled(outward, face[0]), up, face[1])),
    });
  };
  const deep = off + free - sizes.hoopBottom;
  // rows are drawn a little higher than the net has them
  const lift = firstRows(basket);
  const through = (end: number, out: number) => {
    const { at, out: outward, up } = line.under(end, seam(basket, line, end, deep, lift));
    const face = unit(plus(scaled(outward, 0.6 * Math.sign(out)), up, -1));
    places.push({ at: plus(at, outward, out), face, thick: squeezed(basket, stock) });
  };
  for (let at = 0; at < line.ends; at += 1) {
    const [here, next] = [at + 0.5, at + 1.5];
    const { inside, down } = profiles(here, next);
    const [over, after] = [here, next].map((end) => clearOf(end, aside, inTheWay, line.ends)) as [
      number,
      number,
    ];
    const upright = line.place(over);
    // at a slant round a leg it crosses the hoops' faces farther from where they were measured
    const more = over === here && after === next ? 0 : 2 * free;
    for (const place of inside) lay(place, upright, more);
    for (const { place, share } of down) {
      lay(place, line.place(over + (next - over) * (0.06 + 0.88 * share)), more);
    }
    through(next, line.half + off);
    through(after, -line.half - off);
  }
  const colour = strandColour('bleached');
  const look = { name: drawnWords.lashing, stock, colour, seed: 80, between: 0 };
  return { ...strandAlong(places, look), isThrough: true };
}

/** How a lash that goes up at one end and down to another lies on the rim there. */
function lashProfiles({ plan }: Basket, line: RimLine, sizes: RimSizes, off: number) {
  const laps = ([1, -1] as const).map((side) => hoopLap(plan, line, side));
  const isIn = ({ start, lapped }: HoopLap, end: number) => {
    const from = (((end - start) % line.ends) + line.ends) % line.ends;
    return from < lapped + 1.1 || from > line.ends - 1.1;
  };
  const known = new Map<string, ReturnType<typeof profileOf>>();
  const profileOf = (lapped: Lapped) => {
    const all = rimProfile(plan, sizes, off, lapped);
    const crest = all.findIndex(({ at: [out] }) => out > 0);
    return { inside: all.slice(0, crest), down: stepsDown(all.slice(crest)) };
  };
  return (from: number, to: number) => {
    const [outside, inside] = laps.map((lap) => isIn(lap, from) || isIn(lap, to));
    const lapped = { outside: outside === true, inside: inside === true };
    const key = JSON.stringify(lapped);
    const profile = known.get(key) ?? profileOf(lapped);
    known.set(key, profile);
    return profile;
  };
}

/** Places down the outside, none far from the next, and the share of the way down that each has come. */
function stepsDown(outside: readonly ProfilePlace[]) {
  const fine = outside.flatMap((to, index): ProfilePlace[] => {
    const from = outside[index - 1];
    if (!from) return [to];
    const [x, y] = [to.at[0] - from.at[0], to.at[1] - from.at[1]];
    const pieces = Math.ceil(Math.hypot(x, y) / longest);
    return Array.from({ length: pieces }, (_, piece): ProfilePlace => {
      const share = (piece + 1) / pieces;
      return {
        at: [from.at[0] + share * x, from.at[1] + share * y],
        // between two corners it lies flat on what is there
        face: share < 1 ? [-y, x] : to.face,
      };
    });
  });
  const [high, low] = [fine[0]?.at[1] ?? 0, fine.at(-1)?.at[1] ?? 0];
  return fine.map((place) => ({ place, share: (high - place.at[1]) / (high - low || 1) }));
}

/** Share of its thickness that is left where a lashing is pulled through between two packed rows. */
function squeezed({ plan, net }: Basket, { thickness }: Stock): number {
  const free = (net.rows.at(-1)?.pitch ?? 0) - (plan.bands.at(-1)?.weaver.width ?? 0);
  return Math.min(1, Math.max(0.15, free / thickness));
}

/** How far under the wall's top two rows meet at `end`, at least `least` down, mm. */
function seam(
  { plan, net }: Basket,
  line: RimLine,
  end: number,
  least: number,
  lift: FirstRows,
): number {
  const pitch = net.rows.at(-1)?.pitch ?? 0;
  const band = plan.bands.at(-1);
  if (!band || !(pitch > 0)) return least;
  // rows of a spiral lie higher from end to end, by as many rows as it climbs in a turn
  const { climb } = weaveFacts[band.weave];
  const start = climb * (0.5 - (end % line.ends) / line.ends);
  const under = least / pitch;
  const { rise } = lift(net.rows.length - 0.5 - under);
  return (Math.ceil(under + rise - start) + start - rise) * pitch;
}
