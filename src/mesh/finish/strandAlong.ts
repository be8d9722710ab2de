/**
 * A strand laid along places that are given one by one.
 * Hot loops over typed arrays: `!` says that an index is inside.
 */
import type { Strand as Stock } from '../../model/net/net.ts';
import type { Colour } from '../../plan/dyes.ts';
import { crossings, field, stride } from '../crossings.ts';
import { sectionOf } from '../section.ts';
import type { Strand } from '../strandMesh.ts';
import { tangentAt } from '../surface.ts';
import type { Vector } from './vector.ts';

/** A place of a strand. */
export interface Place {
  readonly at: Vector;
  /** Out of the strand's face; need not be square to its way. */
  readonly face: Vector;
  /** Width over the strand's own; 1 where left out. */
  readonly wide?: number;
  /** Thickness over the strand's own; 1 where left out. */
  readonly thick?: number;
}

export interface Look {
  readonly name: string;
  readonly stock: Stock;
  readonly colour: Colour;
  readonly seed: number;
  readonly closed?: boolean;
  readonly between?: number;
}

/** The strand through `places`, smooth from one to the next. */
export function strandAlong(places: readonly Place[], look: Look): Strand {
  const { name, stock, colour, seed, closed = false, between = 1 } = look;
  const count = places.length;
  const path = crossings(count);
  const { data } = path;
  const thinned = new Float64Array(count);
  places.forEach(({ at, face, wide = 1, thick = 1 }, index) => {
    const here = index * stride;
    data.set(at, here + field.position);
    data.set(face, here + field.normal);
    data[here + field.width] = wide * stock.width;
    thinned[index] = thick;
  });
  for (let index = 0; index < count; index += 1) {
    const here = index * stride;
    const [first, last] = closed ? [0, (count - 1) * stride] : [here, here];
    const before = index > 0 ? here - stride : last;
    const after = index + 1 < count ? here + stride : first;
    tangentAt(data, here + field.tangent, data, before, here, after, data, here + field.normal);
  }
  const section = sectionOf(stock);
  return {
    name,
    path,
    section,
    thickness: stock.thickness,
    thinned,
    colour,
    seed,
    between,
    closed,
  };
}
