/** The rim as painted: a hoop outside and one inside, what lies between, and the lashing. */
import type { Basket } from '../../../model/basket.ts';
import { strandColour } from '../../../plan/dyes.ts';
import type { Camera, Vector } from './camera.ts';
import { between, direction, dot, moved } from './camera.ts';
import type { Nodes } from './nodes.ts';
import type { Pile, Ribbon } from './ribbon.ts';

/** Share of the hoop's width that stands over the wall. */
export const standing = 0.35;

/** One pile an end: hoop and top from the middle of one gap to that of the next, and a lash. */
export function rimPiles({ net, plan }: Basket, { at, normal }: Nodes, camera: Camera): Pile[] {
  const row = net.rows.length - 1;
  const ends = net.ends.length;
  const nodeOf = (end: number) => net.ends[(end + ends) % ends]?.nodes[row] ?? 0;
  const { hoop, lasher } = plan.rim;
  const pitch = net.rows[row]?.pitch ?? 0;
  const band = plan.bands.at(-1);
  const face = plan.base.stake.thickness / 2 + (band?.weaver.thickness ?? 0);
  return net.ends.map((own, end) => {
    const [before, left, place, right, after] = [-2, -1, 0, 1, 2].map((step) =>
      at(nodeOf(end + step)),
    ) as [Vector, Vector, Vector, Vector, Vector];
    const out = normal(nodeOf(end));
    const upward = direction(at(own.nodes[row - 1] ?? 0), place);
    const along = direction(left, right);
    const line = [
      between(before, left, place, right, 0.5),
      between(before, left, place, right, 0.75),
      place,
      between(left, place, right, after, 0.25),
      between(left, place, right, after, 0.5),
    ];
    const top = pitch / 2 + standing * hoop.width;
    const edge = (side: number, height: number) =>
      line.map((point) => moved(moved(point, out, side * (face + hoop.thickness)), upward, height));
    const seen = dot(out, camera.toEye) >= 0 ? 1 : -1;
    const facing = moved([0, 0, 0], out, seen);
    const [high, low, far] = [edge(seen, top), edge(seen, top - hoop.width), edge(-seen, top)];
    const light = seen > 0 ? 1.02 : 0.84;
    const colour = strandColour('natural');
    const faceRibbon: Ribbon = {
      outline: [...high, ...low.toReversed()],
      edges: [high, low],
      facing,
      light,
      colour,
    };
    const topRibbon: Ribbon = {
      outline: [...high, ...far.toReversed()],
      edges: [high, far],
      facing: upward,
      light: 0.95,
      colour,
    };
    const lash = (points: readonly Vector[], side: number): Vector =>
      moved(points[4] ?? place, along, (side * lasher.width) / 2);
    const slant = 0.5 * hoop.width;
    const lashRibbon: Ribbon = {
      outline: [
        lash(far, -1),
        lash(high, -1),
        moved(lash(low, -1), along, -slant),
        moved(lash(low, 1), along, -slant),
        lash(high, 1),
        lash(far, 1),
      ],
      edges: [],
      facing,
      light: 0.82,
      colour,
    };
    return { place, before: 3, ribbons: [topRibbon, faceRibbon, lashRibbon] };
  });
}
