import { baseSize } from '../../plan/baseSize.ts';
import type { Layout } from './basketNet.ts';
import type { Net, Row, Side } from './net.ts';

/**
 * A fixed handle (or stiff hoop) holds two stakes across from each other: at each row they are as far apart
 * as its legs, which run straight from the base's edge to the handle's spread at the last row.
 */
export function heldWidths(
  { plan, base, ends, wall }: Layout,
  rows: readonly Row[],
): Net['heldWidths'] {
  const { handle } = plan;
  if (handle.kind !== 'fixed') return { nodes: new Int32Array(0), length: new Float64Array(0) };
  const along = handle.across === 'length';
  const pair = along ? (['west', 'east'] as const) : (['south', 'north'] as const);
  const [near = [], far = []] = pair.map((side) =>
    middleEnds(base.places, ends, side, along ? 'y' : 'x'),
  );
  const { length, width } = baseSize(plan.base);
  const below = along ? length : width;
  const whole = rows.reduce((sum, row) => sum + row.pitch, 0);
  const nodes: number[] = [];
  const apart: number[] = [];
  let woven = 0;
  for (let k = 1; k < rows.length; k++) {
    const height = (woven + rows[k]!.pitch / 2) / whole;
    woven += rows[k]!.pitch;
    for (let i = 0; i < Math.min(near.length, far.length); i++) {
      nodes.push(wall(k, near[i]!), wall(k, far[i]!));
      apart.push(below + (handle.spread - below) * height);
    }
  }
  return { nodes: Int32Array.from(nodes), length: Float64Array.from(apart) };
}

/** The end in the middle of a side, or the two that share it, from south to north or west to east. */
function middleEnds(
  places: Layout['base']['places'],
  ends: Layout['ends'],
  side: Side,
  axis: 'x' | 'y',
): number[] {
  const off = ends.map(({ place, offset }) => {
    const { x, y, alongX, alongY } = places[place]!;
    return axis === 'x' ? x + alongX * offset : y + alongY * offset;
  });
  const onSide = off.flatMap((_, e) => (places[ends[e]!.place]!.side === side ? [e] : []));
  const nearest = onSide.reduce((least, e) => Math.min(least, Math.abs(off[e]!)), 1e9);
  return onSide.filter((e) => Math.abs(off[e]!) < nearest + 1e-6).sort((p, q) => off[p]! - off[q]!);
}
