import type { Net } from '../net/net.ts';
import { share } from '../net/smoothLength.ts';
import type { Elements } from './elements.ts';
import type { Weigher } from './weigher.ts';

/** The rows as loops, then the flat rows of the base; and the stiffest row as a spring. */
export function loops(
  net: Net,
  weigh: Weigher,
  uprightShare: number,
): Elements['loop'] & { readonly stiffest: number } {
  const walls = net.rows.length - 1;
  const rings = [...net.rows.slice(1), ...net.flatRows];
  const count = rings.reduce((sum, ring) => sum + ring.nodes.length, 0);
  const first = new Int32Array(rings.length + 1);
  const nodes = new Int32Array(count);
  const below = new Int32Array(count);
  const column = () => new Float64Array(count);
  const [shareA, shareB, segmentWeight, turnWeight] = [column(), column(), column(), column()];
  const [stiffness, hold] = [column(), column()];
  let stiffest = 0;
  let at = 0;
  rings.forEach((ring, r) => {
    first[r] = at;
    const n = ring.nodes.length;
    const set = r < walls ? net.rows[r + 1]!.hold : null;
    for (let j = 0; j < n; j++, at++) {
      const next = j + 1 < n ? j + 1 : 0;
      const before = j > 0 ? j - 1 : n - 1;
      nodes[at] = ring.nodes[j]!;
      below[at] = set ? net.ends[j]!.nodes[r]! : ring.nodes[j]!;
      shareA[at] = share(ring.spacing, j, j);
      shareB[at] = share(ring.spacing, j, next);
      segmentWeight[at] = weigh.pair(ring.nodes[j]!, ring.nodes[next]!);
      turnWeight[at] = weigh.triple(ring.nodes[before]!, ring.nodes[j]!, ring.nodes[next]!);
      stiffness[at] = (2 * ring.stiffness) / (ring.spacing[j]! + ring.spacing[before]!);
      hold[at] = set ? 2 * Math.sin(set[j]! / 2) : 0;
    }
    if (set) stiffest = Math.max(stiffest, ring.stiffness / (ring.girth / n) ** 3);
  });
  first[rings.length] = at;
  const upright = rings.map((ring, r) =>
    r < walls ? (uprightShare * ring.stiffness * ring.nodes.length ** 4) / ring.girth ** 3 : 0,
  );
  const target = rings.map((ring, r) => ring.girth - (net.rows[r + 1]?.cornerLength ?? 0));
  return {
    first,
    nodes,
    below,
    shareA,
    shareB,
    segmentWeight,
    turnWeight,
    stiffness,
    hold,
    strict: walls,
    target: Float64Array.from(target),
    upright: Float64Array.from(upright),
    stiffest,
  };
}
