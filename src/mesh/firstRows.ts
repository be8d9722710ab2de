/** Hot loops over typed arrays: `!` says that an index is inside. */
import type { Basket } from '../model/basket.ts';
import { halfBase, halfEdge, halfWall } from '../model/read/wallThickness.ts';
import { tightPitch } from '../plan/weaveFacts.ts';

/** Rows over which the wall closes up. */
const most = 16;
/** Share of the distance between two rows that they may take up. */
const slack = 0.98;

/** How far up row `row` (parts of a row allowed) is drawn, in rows, and how much of its width is left. */
export type FirstRows = (row: number) => { readonly rise: number; readonly share: number };

/**
 * Row 1 lies on the stakes of the base, and the net counts it from their middle: so the first rows are
 * drawn a little higher and closer together, and the rest where they are.
 */
export function firstRows(basket: Basket): FirstRows {
  const { net, plan } = basket;
  const last = Math.min(most, Math.max(1, net.rows.length - 2));
  let wall = 0;
  for (let row = 1; row <= last; row += 1) wall += net.rows[row]!.pitch;
  const top = plan.base.kind === 'mat' ? halfBase(plan) : halfEdge(plan);
  const first = net.rows[1];
  const tight = (row: number) => {
    const band = plan.bands[net.rows[row]?.band ?? 0];
    return band ? tightPitch(band.weave, band.weaver) : 0;
  };
  const clear = Math.max(0, ((first?.pitch ?? 0) - tight(1)) / 2);
  const turn = meanTurn(basket);
  // where the upper face of the base and the inner face of the wall meet, along the wall
  const corner = (top + halfWall(plan, 1) * Math.cos(turn)) / Math.sin(turn);
  const lift = Math.min(Math.max(0, corner - clear), 0.25 * wall);
  const still = { rise: 0, share: 1 };
  return (row) => {
    if (row > last + 0.5 || wall === 0) return still;
    const near = Math.max(1, Math.min(last, Math.round(row)));
    const { pitch } = net.rows[near]!;
    const height = Math.max(0, ((row - 0.5) / last) * wall);
    const closer = (slack * pitch * (1 - lift / wall)) / Math.max(tight(near), 1e-9);
    return {
      rise: (lift * (1 - height / wall)) / pitch,
      share: Math.min(1, Math.max(0.7, closer)),
    };
  };
}

/** Angle by which the stakes turn up from the level, mean of the ends, radians. */
function meanTurn({ net, positions }: Basket): number {
  const above = Math.min(2, net.rows.length - 1);
  let sum = 0;
  for (const { nodes } of net.ends) {
    const [low, high] = [3 * nodes[0]!, 3 * nodes[above]!];
    const [x, y] = [positions[low]!, positions[low + 1]!];
    const out = Math.hypot(positions[high]!, positions[high + 1]!) - Math.hypot(x, y);
    sum += Math.atan2(positions[high + 2]! - positions[low + 2]!, out);
  }
  return Math.min(2.4, Math.max(0.6, sum / net.ends.length));
}
