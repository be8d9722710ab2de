/**
 * Rim and handle of the basket as a line drawing, to go with its outline.
 * Hot loops over typed arrays: `!` says that an index is inside.
 */
import type { Basket } from '../model/basket.ts';
import { field, stride } from './crossings.ts';
import { drawnPlaces } from './drawnPlaces.ts';
import { envelope } from './envelope.ts';
import { handleFeet, handleFrame } from './finish/handleStrands.ts';
import type { RimLine } from './finish/rimLine.ts';
import { rimLine } from './finish/rimLine.ts';
import type { RimSizes } from './finish/rimStrands.ts';
import { rimSizes } from './finish/rimStrands.ts';
import { cross, plus, scaled, vectorAt } from './finish/vector.ts';
import type { FlatLine } from './flatLines.ts';
import { nearHalf, reversed, spread } from './flatLines.ts';
import { flatStrip } from './flatStrip.ts';
import { levelledNormals } from './onTable.ts';
import type { OutlineView } from './outline.ts';
import type { Strand } from './strandMesh.ts';
import { nodeNormals } from './surface.ts';

export interface FlatFinish {
  /** The near half of the outside hoop, a closed line; it lies before the wall. */
  readonly hoop: FlatLine;
  /** Ears and bow, a closed line each; what of them is under the rim is behind the wall. */
  readonly handle: readonly FlatLine[];
  /** Smallest and largest x, and largest y. */
  readonly left: number;
  readonly right: number;
  readonly top: number;
}

/** The finish seen from the side or the end. */
export function flatFinish(basket: Basket, view: OutlineView): FlatFinish {
  const axis = view === 'side' ? 0 : 1;
  const drawn = { ...basket, positions: drawnPlaces(basket) };
  const line = rimLine(drawn, levelledNormals(basket, nodeNormals(basket.net, basket.positions)));
  const sizes = rimSizes(drawn, line);
  const hoop = flatHoop(line, sizes, axis);
  const handle = handleOf(drawn, line, sizes).map((strand) => flatStrip(cornersOf(strand, axis)));
  const all = [hoop, ...handle].flat();
  const along = all.filter((_, at) => at % 2 === 0);
  return {
    hoop,
    handle,
    left: Math.min(...along),
    right: Math.max(...along),
    top: Math.max(...all.filter((_, at) => at % 2 === 1)),
  };
}

function handleOf(basket: Basket, line: RimLine, sizes: RimSizes): readonly Strand[] {
  const { handle } = basket.plan;
  const feet = handleFeet(basket, line);
  if (handle.kind === 'none' || !feet) return [];
  const { ears, bow } = handleFrame(basket, handle, line, sizes, feet);
  return [...ears, bow];
}

/** Places read along the rim from one end to the next. */
const readings = 3;

function flatHoop(line: RimLine, sizes: RimSizes, axis: 0 | 1): FlatLine {
  const loop = (high: number) => {
    const places = Array.from({ length: readings * line.ends + 1 }, (_, at) => {
      const { at: place, out, up } = line.place(at / readings);
      return plus(plus(place, up, high), out, sizes.outside);
    });
    return places.flatMap((place) => [place[axis], place[2]]);
  };
  const upper = loop(sizes.hoopTop);
  const [lower, near] = [nearHalf(loop(sizes.hoopBottom)), nearHalf(upper)];
  const tips = [near.slice(0, 2), near.slice(-2)] as const;
  const across = spread(tips[0][0] ?? 0, tips[1][0] ?? 0);
  return [...lower, ...tips[1], ...reversed(envelope([upper], across, 'upper')), ...tips[0]];
}

/** The four corners of a strand's section at each place: x, y, x, y, … */
function cornersOf({ path, thickness, thinned }: Strand, axis: 0 | 1): number[][] {
  const { data, count } = path;
  return Array.from({ length: count }, (_, at) => {
    const here = at * stride;
    const middle = vectorAt(data, here);
    const normal = vectorAt(data, here + field.normal);
    const across = cross(normal, vectorAt(data, here + field.tangent));
    const thick = (thickness * (thinned?.[at] ?? 1)) / 2;
    const wide = data[here + field.width]! / 2;
    return [1, -1].flatMap((face) =>
      [1, -1].flatMap((side) => {
        const off = plus(scaled(normal, face * thick), across, side * wide);
        return [middle[axis] + off[axis], middle[2] + off[2]];
      }),
    );
  });
}
