import type { BaseMirror } from '../base/basePart.ts';
import type { Layout } from './basketNet.ts';
import type { Net } from './net.ts';

/**
 * The mirror image of every node in x = 0 and in y = 0, or null where the net has no such mirror: an odd
 * end leaves at most the plane that runs through it.
 */
export function netMirror(layout: Layout, nodeCount: number): Net['mirror'] {
  const { x, y } = layout.base.mirror;
  return { x: x && images(layout, nodeCount, x), y: y && images(layout, nodeCount, y) };
}

function images(
  { base, ends, rows, edge, wall }: Layout,
  nodeCount: number,
  mirror: BaseMirror,
): Int32Array | null {
  const at = new Map(ends.map(({ place, second }, e) => [2 * place + second, e]));
  const endImage = ends.map(({ place, second }) => {
    const twin = mirror.place[place]!;
    const paired = at.has(2 * place + 1);
    if (paired !== at.has(2 * twin + 1)) return -1;
    return at.get(2 * twin + (paired ? 1 - second : second)) ?? -1;
  });
  if (endImage.includes(-1)) return null;
  const image = new Int32Array(nodeCount);
  image.set(mirror.node);
  base.places.forEach((_, place) => {
    image[edge(place)] = edge(mirror.place[place]!);
  });
  for (let k = 1; k <= rows; k++) {
    for (let e = 0; e < ends.length; e++) image[wall(k, e)] = wall(k, endImage[e]!);
  }
  return image;
}
