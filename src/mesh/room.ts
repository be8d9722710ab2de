/**
 * How much room strands have beside each other. Where stakes crowd (pinned corners, the halves of a
 * split stake at its foot) they are drawn only as wide as leaves room for the weaver to pass between.
 * Hot loops over typed arrays: `!` says that an index is inside.
 */
import type { Basket } from '../model/basket.ts';

/** Weaver thicknesses that are kept free between two stakes. */
const free = 1.5;
/** The same for twined pairs, which cross there. */
const freeForPairs = 2.6;
/** Stakes of the base that lie side by side keep this share of the distance between them. */
const share = 0.94;

/** Room that the weaver of a band needs between two stakes, mm; none for the base's edge, band −1. */
export function clearance({ bands }: Basket['plan'], band: number): number {
  const woven = bands[band];
  if (!woven) return 0;
  return (woven.weave === 'twined' ? freeForPairs : free) * woven.weaver.thickness;
}

/** Widest that a stake may be drawn at each node, mm; no limit where nothing lies beside it. */
export function stakeRoom({ net, plan, positions }: Basket): Float64Array {
  const room = new Float64Array(net.nodeCount).fill(Number.POSITIVE_INFINITY);
  const limit = (a: number, b: number, width: number) => {
    room[a] = Math.min(room[a]!, width);
    room[b] = Math.min(room[b]!, width);
  };
  const apart = (a: number, b: number) =>
    Math.hypot(
      positions[3 * b]! - positions[3 * a]!,
      positions[3 * b + 1]! - positions[3 * a + 1]!,
      positions[3 * b + 2]! - positions[3 * a + 2]!,
    );
  const round = (nodes: Int32Array, width: (distance: number) => number) => {
    nodes.forEach((node, at) => {
      const next = nodes[at + 1 < nodes.length ? at + 1 : 0]!;
      if (node !== next) limit(node, next, width(apart(node, next)));
    });
  };
  const beside = (clear: number) => (distance: number) =>
    clear > 0 ? Math.max(0.45 * distance, distance - clear) : share * distance;
  for (const { nodes, band } of net.rows) round(nodes, beside(clearance(plan, band)));
  // rows woven flat are of the first band's weaver
  for (const { nodes } of net.flatRows) round(nodes, beside(clearance(plan, 0)));
  const { nodes } = net.ties;
  for (let at = 0; at + 1 < nodes.length; at += 2) {
    const [a, b] = [nodes[at]!, nodes[at + 1]!];
    limit(a, b, share * apart(a, b));
  }
  return room;
}
