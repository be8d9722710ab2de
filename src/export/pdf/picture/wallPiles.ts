/** The wall as painted: at every crossing a piece of stake and a piece of weaver. */
import { weaverIsOutside } from '../../../mesh/weave.ts';
import type { Basket } from '../../../model/basket.ts';
import { strandColour } from '../../../plan/dyes.ts';
import type { Camera } from './camera.ts';
import { between, direction, dot, middle, moved } from './camera.ts';
import type { Nodes } from './nodes.ts';
import type { Pile, Ribbon } from './ribbon.ts';
import { ribbonAlong } from './ribbon.ts';

/** Light that comes to what lies under another strand, and to the inside of the basket. */
const underLight = 0.86;
const insideLight = 0.74;

/** One pile a crossing. */
export function wallPiles(basket: Basket, nodes: Nodes, camera: Camera): Pile[] {
  const { net } = basket;
  const piles: Pile[] = [];
  for (let row = 0; row < net.rows.length; row += 1) {
    for (let end = 0; end < net.ends.length; end += 1) {
      piles.push(crossing(basket, nodes, camera, row, end));
    }
  }
  return piles;
}

function crossing(
  { net, plan }: Basket,
  { at, normal }: Nodes,
  camera: Camera,
  row: number,
  end: number,
): Pile {
  const ends = net.ends.length;
  const nodeOf = (r: number, e: number) => {
    const own = net.ends[(e + ends) % ends];
    const last = net.rows.length - 1;
    return own?.nodes[Math.min(last, Math.max(0, r))] ?? 0;
  };
  const node = nodeOf(row, end);
  const place = at(node);
  const out = normal(node);
  const seenOutside = dot(out, camera.toEye) >= 0;
  const facing = seenOutside ? out : moved([0, 0, 0], out, -1);
  const light = seenOutside ? 1 : insideLight;
  const [left, right] = [at(nodeOf(row, end - 1)), at(nodeOf(row, end + 1))];
  const [below, above] = [at(nodeOf(row - 1, end)), at(nodeOf(row + 1, end))];
  const along = direction(left, right);
  const upward = direction(below, above);
  const half = (net.rows[row]?.pitch ?? 0) / 2;
  const isLast = row === net.rows.length - 1;
  const foot = row === 0 ? place : middle(below, place);
  const top = isLast ? moved(place, upward, half) : middle(place, above);
  const stake: Ribbon = ribbonAlong(
    [foot, place, top],
    [along, along, along],
    net.ends[end]?.width ?? 0,
    { facing, light, colour: strandColour('natural') },
  );
  const band = plan.bands[net.rows[row]?.band ?? -1];
  if (!band) return { place, before: 0, ribbons: [stake] };

  const isOver =
    band.weave === 'twined' || weaverIsOutside(band.weave, row, end, ends) === seenOutside;
  const thick = (plan.base.stake.thickness + band.weaver.thickness) / 2;
  const rise = (isOver ? 1 : -1) * thick;
  const [before, after] = [at(nodeOf(row, end - 2)), at(nodeOf(row, end + 2))];
  const line = [
    between(before, left, place, right, 0.5),
    moved(between(before, left, place, right, 0.75), facing, 0.7 * rise),
    moved(place, facing, rise),
    moved(between(left, place, right, after, 0.25), facing, 0.7 * rise),
    between(left, place, right, after, 0.5),
  ];
  const wide = band.weave === 'twined' ? 2 * band.weaver.thickness : band.weaver.width;
  const weaver = ribbonAlong(
    line,
    line.map(() => upward),
    wide,
    { facing, light: isOver ? light : light * underLight, colour: strandColour(band.colour) },
  );
  const under = { ...stake, light: light * underLight };
  return { place, before: 0, ribbons: isOver ? [under, weaver] : [weaver, stake] };
}
