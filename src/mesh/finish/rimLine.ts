/**
 * The top of the wall as a line to lay the rim along.
 * Hot loops over typed arrays: `!` says that an index is inside.
 */
import type { Basket } from '../../model/basket.ts';
import { halfWall } from '../../model/read/wallThickness.ts';
import { arcPlace } from '../arc.ts';
import { crossings, field, stride } from '../crossings.ts';
import { tangentAt } from '../surface.ts';
import type { Vector } from './vector.ts';
import { cross, dot, minus, mix, plus, size, unit, vectorAt } from './vector.ts';

/** A place on the top of the wall, in its middle, with unit directions out of the basket and up the wall. */
export interface RimPlace {
  readonly at: Vector;
  readonly out: Vector;
  readonly up: Vector;
}

export interface RimLine {
  /** Count of ends: the line goes from 0 to this, and on from its beginning. */
  readonly ends: number;
  /** Length round, mm. */
  readonly length: number;
  /** From the middle of the wall to either face, at its top and where it is thickest, mm. */
  readonly half: number;
  readonly widest: number;
  /**
   * How far the outer face stands out over its line at most, mm: a weaver lies flat over each stake, and
   * where the rim turns its flat ends stand out.
   */
  readonly bulge: number;
  /** How far weavers of the last rows stand in from the inner face at most, mm. */
  readonly hollow: number;
  /** Wall from the base's edge to its top, along a stake, mm. */
  readonly wall: number;
  /** The place at end `end`, or a part of the way to the next. */
  readonly place: (end: number) => RimPlace;
  /** The place on the wall `down` mm under the top, by the nearest rows. */
  readonly under: (end: number, down: number) => RimPlace;
}

/** The rim line of a basket as drawn. */
export function rimLine(basket: Basket, normals: Float64Array): RimLine {
  const { net, plan, positions } = basket;
  const ends = net.ends.length;
  const rows = net.rows.length - 1;
  const path = crossings(ends + 1);
  const { data } = path;
  const ups: Vector[] = [];
  const nodeAt = (end: number, row: number) => 3 * net.ends[end % ends]!.nodes[row]!;
  for (let end = 0; end <= ends; end += 1) {
    const last = vectorAt(positions, nodeAt(end, rows));
    const up = unit(minus(last, vectorAt(positions, nodeAt(end, rows - 1))));
    ups.push(up);
    const here = end * stride;
    data.set(plus(last, up, net.rows[rows]!.pitch / 2), here);
    data.set(vectorAt(normals, nodeAt(end, rows)), here + field.normal);
  }
  for (let end = 0; end <= ends; end += 1) {
    const here = end * stride;
    const before = end > 0 ? here - stride : (ends - 1) * stride;
    const after = end < ends ? here + stride : stride;
    tangentAt(data, here + field.tangent, data, before, here, after, data, here + field.normal);
  }
  const place = (end: number): RimPlace => {
    const whole = ((end % ends) + ends) % ends;
    const first = Math.min(ends - 1, Math.floor(whole));
    const { position, face } = arcPlace(path, first, first + 1, whole - first);
    const leant = mix(ups[first]!, ups[first + 1]!, whole - first);
    return { at: position, out: face, up: unit(plus(leant, face, -dot(leant, face))) };
  };
  const under = (end: number, down: number): RimPlace => {
    const top = place(end);
    let left = down - net.rows[rows]!.pitch / 2;
    if (left <= 0) return { ...top, at: plus(top.at, top.up, -down) };
    const whole = ((end % ends) + ends) % ends;
    const first = Math.floor(whole);
    const between = (list: Float64Array, row: number) =>
      mix(
        vectorAt(list, nodeAt(first, row)),
        vectorAt(list, nodeAt(first + 1, row)),
        whole - first,
      );
    // the chord between two ends lies inside the row's curve as far as at the top
    const edge = plus(top.at, top.up, -net.rows[rows]!.pitch / 2);
    const bow = minus(edge, between(positions, rows));
    for (let row = rows; row > 1; row -= 1) {
      const [high, low] = [between(positions, row), between(positions, row - 1)];
      const step = size(minus(high, low));
      if (left <= step || row === 2) {
        const part = Math.min(1, left / (step || 1));
        const up = unit(minus(high, low));
        const face = unit(mix(between(normals, row), between(normals, row - 1), part));
        const at = plus(mix(high, low, part), bow);
        return { at, out: unit(plus(face, up, -dot(face, up))), up };
      }
      left -= step;
    }
    return top;
  };
  let length = 0;
  for (let end = 0; end < ends; end += 1) {
    length += size(minus(vectorAt(data, (end + 1) * stride), vectorAt(data, end * stride)));
  }
  let bulge = 0;
  for (let end = 0; end < ends; end += 1) {
    const [here, next] = [place(end), place(end + 1)];
    const turned = size(minus(next.out, here.out)) / (size(minus(next.at, here.at)) || 1);
    bulge = Math.max(bulge, (turned * (0.6 * plan.base.stake.width) ** 2) / 2);
  }
  bulge = Math.min(bulge, 1);
  const wall = net.rows.reduce((sum, { pitch }) => sum + pitch, 0);
  const widest = net.rows.reduce((most, _, row) => Math.max(most, row && halfWall(plan, row)), 0);
  return { ends, length, half: halfWall(plan, rows), widest, bulge, hollow: 0, wall, place, under };
}

/** The way along the rim, counter-clockwise seen from above. */
export function along({ out, up }: RimPlace): Vector {
  return cross(up, out);
}

/** Where the rim crosses a level axis through the middle, on its lower (−1) or its higher side. */
export function crossingOf(line: RimLine, axis: 'x' | 'y', side: 1 | -1): number {
  const [level, other] = axis === 'x' ? ([1, 0] as const) : ([0, 1] as const);
  const offAt = (end: number) => line.place(end).at[level];
  for (let end = 0; end < line.ends; end += 1) {
    const from = offAt(end);
    if (from * offAt(end + 1) > 0 || side * line.place(end).at[other] <= 0) continue;
    let [low, high] = [end, end + 1];
    for (let turn = 0; turn < 30; turn += 1) {
      const middle = (low + high) / 2;
      if (offAt(middle) * from > 0) low = middle;
      else high = middle;
    }
    return (low + high) / 2;
  }
  return 0;
}
