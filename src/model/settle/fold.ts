import type { Net } from '../net/net.ts';

/**
 * Mirror planes folded away: only one node of each set of mirror images is an unknown, the others
 * follow by a change of sign. A coordinate across a plane is held at 0 for a node that lies in it.
 */
export interface Fold {
  /** Unknown nodes ("lead" nodes), numbered ring by ring so that the stiffness keeps a narrow band. */
  readonly leads: Int32Array;
  /** Lead number of every node. */
  readonly lead: Int32Array;
  /** Sign of x and of y between a node and its lead; 0 where the coordinate is held at 0. */
  readonly signX: Float64Array;
  readonly signY: Float64Array;
  /** Leads that do not move (a board's). */
  readonly fixed: Int32Array;
  /** Planes folded, as node images; used to find which elements are images of each other. */
  readonly images: readonly Int32Array[];
}

/** The fold of a net over the mirror planes it has; `planes: 'none'` keeps every node. */
export function fold(net: Net, planes: 'all' | 'none' = 'all'): Fold {
  const { nodeCount, start, ring } = net;
  const mirrorX = planes === 'all' ? net.mirror.x : null;
  const mirrorY = planes === 'all' ? net.mirror.y : null;
  const lead = new Int32Array(nodeCount);
  const signX = new Float64Array(nodeCount).fill(1);
  const signY = new Float64Array(nodeCount).fill(1);
  const leadNode = new Int32Array(nodeCount);
  for (let node = 0; node < nodeCount; node++) {
    let own = node;
    // A node on the near side of a plane is led by its image on the far side.
    if (mirrorX) own = farther(own, mirrorX[own] ?? own, start, 0);
    if (mirrorY) own = farther(own, mirrorY[own] ?? own, start, 1);
    leadNode[node] = own;
    if (mirrorX && own !== node && sameSide(node, own, mirrorX, mirrorY)) signX[node] = -1;
    if (mirrorY && own !== node && sameSide(node, own, mirrorY, mirrorX)) signY[node] = -1;
    if (mirrorX && mirrorX[node] === node) signX[node] = 0;
    if (mirrorY && mirrorY[node] === node) signY[node] = 0;
  }
  const leads = [...new Set(leadNode)].sort((p, q) => {
    const byRing = (ring[p] ?? 0) - (ring[q] ?? 0);
    if (byRing !== 0) return byRing;
    const byAngle = angleFromSouth(start, p) - angleFromSouth(start, q);
    return Math.abs(byAngle) > 1e-9 ? byAngle : radius(start, p) - radius(start, q) || p - q;
  });
  const number = new Int32Array(nodeCount).fill(-1);
  leads.forEach((node, index) => {
    number[node] = index;
  });
  for (let node = 0; node < nodeCount; node++) lead[node] = number[leadNode[node] ?? 0] ?? 0;
  const both = mirrorX && mirrorY ? mirrorX.map((image) => mirrorY[image] ?? image) : null;
  const images = [mirrorX, mirrorY, both].filter((map) => map !== null);
  const fixed = leads.flatMap((node, index) => (net.fixed[node] ? [index] : []));
  return {
    leads: Int32Array.from(leads),
    lead,
    signX,
    signY,
    fixed: Int32Array.from(fixed),
    images,
  };
}

/** Positions of all nodes from those of the leads. Both hold x, y, z a node. */
export function unfold({ lead, signX, signY }: Fold, from: Float64Array, to: Float64Array): void {
  for (let node = 0; node < lead.length; node++) {
    const at = 3 * lead[node]!;
    to[3 * node] = signX[node]! * from[at]!;
    to[3 * node + 1] = signY[node]! * from[at + 1]!;
    to[3 * node + 2] = from[at + 2]!;
  }
}

/** Adds up a gradient over all nodes onto the leads. */
export function gather({ lead, signX, signY }: Fold, from: Float64Array, to: Float64Array): void {
  to.fill(0);
  for (let node = 0; node < lead.length; node++) {
    const at = 3 * lead[node]!;
    to[at] = to[at]! + signX[node]! * from[3 * node]!;
    to[at + 1] = to[at + 1]! + signY[node]! * from[3 * node + 1]!;
    to[at + 2] = to[at + 2]! + from[3 * node + 2]!;
  }
}

/** Positions of the leads read out of those of all nodes. */
export function pick({ leads, signX, signY }: Fold, from: Float64Array): Float64Array {
  const to = new Float64Array(3 * leads.length);
  leads.forEach((node, index) => {
    to[3 * index] = signX[node] === 0 ? 0 : from[3 * node]!;
    to[3 * index + 1] = signY[node] === 0 ? 0 : from[3 * node + 1]!;
    to[3 * index + 2] = from[3 * node + 2]!;
  });
  return to;
}

function farther(node: number, image: number, start: Float64Array, axis: 0 | 1): number {
  return start[3 * image + axis]! > start[3 * node + axis]! + 1e-9 ? image : node;
}

/** True when `node` and its lead lie on opposite sides of the plane that `across` mirrors in. */
function sameSide(
  node: number,
  lead: number,
  across: Int32Array,
  other: Int32Array | null,
): boolean {
  if (across[node] === lead) return true;
  return other !== null && across[other[node]!] === lead && other[node] !== lead;
}

function angleFromSouth(start: Float64Array, node: number): number {
  const angle = Math.atan2(start[3 * node + 1]!, start[3 * node]!) + Math.PI / 2;
  return angle < -1e-9 ? angle + 2 * Math.PI : angle;
}

function radius(start: Float64Array, node: number): number {
  return Math.hypot(start[3 * node]!, start[3 * node + 1]!);
}
