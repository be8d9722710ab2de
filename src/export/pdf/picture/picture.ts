/**
 * The basket drawn at three quarters, as flat vector shapes from far to near: each strand is laid on
 * what lies behind it, so that hidden lines are covered.
 */
import type { Basket } from '../../../model/basket.ts';
import type { LineMark, Mark } from '../page/mark.ts';
import { inks, line } from '../page/mark.ts';
import { basePiles } from './basePiles.ts';
import type { Vector } from './camera.ts';
import { cameraFrom, dot } from './camera.ts';
import { handlePiles } from './handlePiles.ts';
import { nodesOf } from './nodes.ts';
import type { Ribbon } from './ribbon.ts';
import { rimPiles } from './rimPiles.ts';
import { wallPiles } from './wallPiles.ts';

/** Left, top, width and height of the place to fill, mm. */
export type Place = readonly [number, number, number, number];

const camera = cameraFrom(32, 27);
/** Where the light comes from, as seen: from the upper left, before the basket. */
const lamp = [-0.45, 0.65, 0.61] as const;

/** Marks of the picture, as large as fits into `place`, standing on its lower edge. */
export function picture(basket: Basket, [left, top, width, height]: Place): Mark[] {
  const nodes = nodesOf(basket);
  const piles = [
    ...wallPiles(basket, nodes, camera),
    ...basePiles(basket, nodes),
    ...rimPiles(basket, nodes, camera),
    ...handlePiles(basket, camera),
  ];
  const shadow = shadowOf(basket, nodes.at);
  const size = extent([...shadow, ...piles.flatMap(({ ribbons }) => ribbons.flatMap(outlineOf))]);
  const scale = Math.min(width / (size.right - size.left), height / (size.top - size.bottom));
  const middle = (size.left + size.right) / 2;
  const flat = (point: Vector): readonly [number, number] => [
    round(left + width / 2 + scale * (dot(point, camera.right) - middle)),
    round(top + height - scale * (dot(point, camera.up) - size.bottom)),
  ];
  const depth = ({ place, before }: (typeof piles)[number]) => dot(place, camera.toEye) + before;
  const order = piles.map((pile) => ({ pile, deep: depth(pile) }));
  order.sort((one, other) => one.deep - other.deep);
  return [
    line(shadow.flatMap(flat), { closed: true, stroke: null, fill: inks.faint }),
    ...order.flatMap(({ pile }) => pile.ribbons.flatMap((ribbon) => painted(ribbon, flat))),
  ];
}

function painted(
  ribbon: Ribbon,
  flat: (point: Vector) => readonly [number, number],
): readonly LineMark[] {
  const { facing } = ribbon;
  const bright = Math.max(
    0,
    lamp[0] * dot(facing, camera.right) +
      lamp[1] * dot(facing, camera.up) +
      lamp[2] * dot(facing, camera.toEye),
  );
  const light = ribbon.light * (0.7 + 0.34 * bright);
  const edge = shade(ribbon.colour, light * 0.5);
  return [
    line(ribbon.outline.flatMap(flat), {
      closed: true,
      stroke: null,
      fill: shade(ribbon.colour, light),
    }),
    ...ribbon.edges.map((one) => line(one.flatMap(flat), { stroke: edge, width: 0.09 })),
  ];
}

/** The foot of the wall, a little wider, laid on the table. */
function shadowOf({ net }: Basket, at: (node: number) => Vector): Vector[] {
  const row = net.rows[Math.min(4, net.rows.length - 1)];
  return Array.from(row?.nodes ?? [], (node) => {
    const [x, y] = at(node);
    return [1.06 * x + 4, 1.06 * y, 0];
  });
}

function outlineOf({ outline }: Ribbon): readonly Vector[] {
  return outline;
}

function extent(points: readonly Vector[]) {
  let [left, right, bottom, top] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const point of points) {
    const x = dot(point, camera.right);
    const y = dot(point, camera.up);
    left = Math.min(left, x);
    right = Math.max(right, x);
    bottom = Math.min(bottom, y);
    top = Math.max(top, y);
  }
  return { left, right, bottom, top };
}

function shade(colour: Ribbon['colour'], light: number): string {
  const channel = (value: number) =>
    Math.round(Math.min(255, Math.max(0, value * light)))
      .toString(16)
      .padStart(2, '0');
  return `#${colour.map(channel).join('')}`;
}

function round(value: number): number {
  return Math.round(value * 1000) / 1000;
}
