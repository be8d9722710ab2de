import type { MatLayout } from './mat.ts';
import type { Side } from './net.ts';

const acrossX: Record<Side, Side> = { south: 'south', east: 'west', north: 'north', west: 'east' };
const acrossY: Record<Side, Side> = { south: 'north', east: 'east', north: 'south', west: 'west' };

/**
 * The mirror image of every node in x = 0 and in y = 0, or null where the net has no such mirror:
 * an odd end leaves at most the plane that runs through it.
 */
export function matMirror(
  layout: MatLayout,
  nodeCount: number,
): { readonly x: Int32Array | null; readonly y: Int32Array | null } {
  const { lengthwise: a, crosswise: b } = layout.plan.base;
  return {
    x: images(layout, nodeCount, acrossX, (i, j) => layout.crossing(i, b - 1 - j)),
    y: images(layout, nodeCount, acrossY, (i, j) => layout.crossing(a - 1 - i, j)),
  };
}

function images(
  { plan, places, ends, rows, crossing, edge, wall }: MatLayout,
  nodeCount: number,
  across: Record<Side, Side>,
  crossingImage: (i: number, j: number) => number,
): Int32Array | null {
  const { lengthwise: a, crosswise: b } = plan.base;
  const flipsLong = across === acrossX;
  const placeImage = places.map(({ side, stake }) => {
    const lies = side === 'south' || side === 'north';
    // The mirror reverses the order along the sides that lie across it.
    const reversed = lies === flipsLong;
    const count = lies ? b : a;
    const index = reversed ? count - 1 - stake : stake;
    return places.findIndex((other) => other.side === across[side] && other.stake === index);
  });
  const endImage = ends.map(({ place, second }) => {
    const twin = placeImage[place] ?? -1;
    const pair = ends.filter((end) => end.place === place).length;
    const twins = ends.filter((end) => end.place === twin).length;
    if (pair !== twins) return -1;
    const image = pair === 2 ? 1 - second : second;
    return ends.findIndex((end) => end.place === twin && end.second === image);
  });
  if (endImage.includes(-1)) return null;
  const mirror = new Int32Array(nodeCount);
  for (let i = 0; i < a; i++) {
    for (let j = 0; j < b; j++) mirror[crossing(i, j)] = crossingImage(i, j);
  }
  placeImage.forEach((image, place) => {
    mirror[edge(place)] = edge(image);
  });
  for (let k = 1; k <= rows; k++) {
    endImage.forEach((image, e) => {
      mirror[wall(k, e)] = wall(k, image);
    });
  }
  return mirror;
}
