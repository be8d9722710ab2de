import { baseEnds } from '../../plan/counts.ts';
import type { OddEnd, WheelBase } from '../../plan/schema.ts';
import type { BaseCell, BasePart, BaseStrand, Place } from './basePart.ts';
import { heldLift } from './dome.ts';
import { angleImages, evenAngles, ringMirror, sideOf } from './round.ts';

/** Rings between hub and edge at the most: the flat rows are many, but a disc needs few to be one. */
const mostRings = 4;

/**
 * The wheel base: spokes through one node at the hub, crossed by a few of the rows woven flat round it.
 * With centre lift the base is a cap of a sphere: the rows are given the girths of that cap,
 * 2πρ·sin(s/ρ), which a disc of fixed spokes takes up by itself.
 *
 * Ends laid in partway start at the first ring beyond their place. An added odd end is a half spoke.
 */
export function wheelBase(base: WheelBase, oddEnd: OddEnd): BasePart {
  const extra = oddEnd.kind === 'added' ? 1 : 0;
  const ends = baseEnds(base) + extra;
  const angles = evenAngles(ends);
  const full = spokeEnds(base, ends, extra === 1 ? oddIndex(angles) : -1);
  const cap = capOf(base);
  const radii = ringRadii(base, ends);
  const from = angles.map((_, e) => (full[e]! >= 0 ? 0 : startRing(base, radii)));
  // Node 0 is the hub; then ring after ring, each with the ends that have started.
  const ringNodes: Int32Array[] = [];
  let inner = 1;
  radii.forEach((_, r) => {
    ringNodes.push(Int32Array.from(angles, (_angle, e) => (from[e]! <= r ? inner++ : -1)));
  });
  const edge = (e: number) => inner + e;
  const all = [...ringNodes, Int32Array.from(angles, (_, e) => edge(e))];
  const spans = [...radii, base.diameter / 2];

  const start = new Float64Array(3 * (inner + ends));
  start[2] = base.centreLift;
  all.forEach((nodes, r) => {
    nodes.forEach((node, e) => {
      if (node < 0) return;
      const radius = spans[r]!;
      const z = cap.height(radius);
      start.set([radius * Math.cos(angles[e]!), radius * Math.sin(angles[e]!), z], 3 * node);
    });
  });
  const places = Array.from(
    angles,
    (angle, e): Place => ({
      side: sideOf(angle),
      x: (base.diameter / 2) * Math.cos(angle),
      y: (base.diameter / 2) * Math.sin(angle),
      alongX: -Math.sin(angle),
      alongY: Math.cos(angle),
      ...strandOf(full, e),
    }),
  );
  const place = (across: 'x' | 'y') => {
    const images = angleImages(angles, across);
    const sameKind = images?.every((image, e) => full[image]! >= 0 === full[e]! >= 0);
    return sameKind ? images : null;
  };
  const mirror = (across: 'x' | 'y') =>
    ringMirror(place(across), (image) => {
      const node = Array.from({ length: inner }, (_, at) => at);
      ringNodes.forEach((nodes) => {
        nodes.forEach((own, e) => {
          if (own >= 0) node[own] = nodes[image[e]!]!;
        });
      });
      return node;
    });
  const ring = Array<number>(inner).fill(0);
  ringNodes.forEach((nodes, r) => {
    for (const node of nodes) if (node >= 0) ring[node] = r + 1;
  });
  const quarter = (angle: number) => {
    const nodes = ringNodes.at(-1)!;
    let best = nodes.find((node) => node >= 0) ?? 0;
    let nearest = Number.POSITIVE_INFINITY;
    nodes.forEach((node, e) => {
      const off = Math.abs(Math.sin((angles[e]! - angle) / 2));
      if (node >= 0 && off < nearest - 1e-9) [best, nearest] = [node, off];
    });
    return best;
  };
  const frame = [-3, -1, 1, 3].map((q) => quarter((q * Math.PI) / 4));
  return {
    inner,
    start,
    ring,
    rings: radii.length + 1,
    places,
    strands: strands(base, angles, full, from, ringNodes, radii, cap.arc),
    ...cells(all, spans, ends),
    loops: all.map((nodes, r) => ({
      nodes: Array.from(nodes).filter((node) => node >= 0),
      girth: 2 * Math.PI * spans[r]!,
    })),
    ties: [],
    mirror: { x: mirror('x'), y: mirror('y') },
    frame: frame as unknown as BasePart['frame'],
    anchors: [0, ...ringNodes[radii.length - 1]!].filter((node) => node >= 0),
    lift: heldLift(
      base.centreLift,
      [{ node: 0, rise: 1 }],
      Array.from(ringNodes.at(-1)!),
      cap.height(radii.at(-1)!) / Math.max(base.centreLift, 1e-9),
    ),
    rigid: false,
    oddPlace: () => oddIndex(angles),
  };
}

/** The end that faces north most nearly: where a wheel has its odd end. */
function oddIndex(angles: Float64Array): number {
  let best = 0;
  angles.forEach((angle, e) => {
    if (Math.sin(angle) > Math.sin(angles[best]!) + 1e-9) best = e;
  });
  return best;
}

/**
 * For each end the number of its spoke, or −1 − k for the k-th end laid in. Ends across from each other
 * share a spoke; those laid in are spread evenly between.
 */
function spokeEnds(base: WheelBase, ends: number, odd: number): Int32Array {
  const order = Array.from({ length: ends }, (_, e) => e).filter((e) => e !== odd);
  const half = Math.floor(order.length / 2);
  const spokes = new Int32Array(ends).fill(-1);
  let spoke = 0;
  for (let i = 0; i < half; i++) {
    const isSpoke =
      Math.floor(((i + 1) * base.spokes) / half) > Math.floor((i * base.spokes) / half);
    if (!isSpoke) continue;
    spokes[order[i]!] = spoke;
    spokes[order[i + half]!] = spoke;
    spoke++;
  }
  let laid = 0;
  spokes.forEach((own, e) => {
    if (own < 0) spokes[e] = -1 - laid++;
  });
  return spokes;
}

function strandOf(full: Int32Array, e: number): Pick<Place, 'strand' | 'far'> {
  const own = full[e]!;
  if (own >= 0) return { strand: own, far: full.indexOf(own) === e ? 0 : 1 };
  const spokes = full.reduce((most, spoke) => Math.max(most, spoke), -1) + 1;
  return { strand: spokes - 1 - own, far: 1 };
}

/** Heights and arc lengths on the cap of the centre lift, by distance from the middle. */
function capOf({ diameter, centreLift: rise }: WheelBase) {
  const radius = diameter / 2;
  // A lift that no eye can see has a sphere too large to reckon with.
  if (rise < 1e-3) return { height: () => 0, arc: (r: number) => r };
  const sphere = (radius ** 2 + rise ** 2) / (2 * rise);
  const edge = Math.sqrt(Math.max(0, sphere ** 2 - radius ** 2));
  return {
    height: (r: number) => Math.sqrt(Math.max(0, sphere ** 2 - r ** 2)) - edge,
    arc: (r: number) => sphere * Math.asin(Math.min(1, r / sphere)),
  };
}

/** Radii of the inner rings, from the hub outward. */
function ringRadii({ hub, diameter }: WheelBase, ends: number): number[] {
  const edge = diameter / 2;
  const first = Math.max(hub / 2, 0.2 * edge);
  const spacing = (2 * Math.PI * edge) / ends;
  const count = Math.max(1, Math.min(mostRings, Math.round((edge - first) / spacing)));
  return Array.from({ length: count }, (_, r) => first + ((edge - first) * r) / count);
}

/** First ring at or beyond the place where more ends are laid in. */
function startRing({ added }: WheelBase, radii: readonly number[]): number {
  const ring = radii.findIndex((radius) => radius >= (added?.at ?? 0) / 2 - 1e-9);
  return ring < 0 ? radii.length - 1 : ring;
}

function strands(
  base: WheelBase,
  angles: Float64Array,
  full: Int32Array,
  from: ArrayLike<number>,
  ringNodes: readonly Int32Array[],
  radii: readonly number[],
  arc: (radius: number) => number,
): BaseStrand[] {
  const natural = (8 * base.centreLift) / (base.diameter ** 2 + 4 * base.centreLift ** 2);
  const outward = (e: number) =>
    ringNodes.filter((_, r) => r >= from[e]!).map((nodes) => nodes[e]!);
  const steps = (e: number) => {
    const spans = [...radii.filter((_, r) => r >= from[e]!), base.diameter / 2].map(arc);
    return spans.slice(1).map((span, i) => span - spans[i]!);
  };
  const first = arc(radii[0]!);
  const spokes: BaseStrand[] = [];
  const laid: BaseStrand[] = [];
  angles.forEach((_, e) => {
    const own = full[e]!;
    if (own < 0) {
      const strand = { part: 'added' as const, index: -1 - own, nodes: outward(e), natural };
      laid.push({ ...strand, places: [-1, e], rest: steps(e) });
      return;
    }
    if (full.indexOf(own) !== e) return;
    const other = full.lastIndexOf(own);
    spokes.push({
      part: 'spoke',
      index: own,
      nodes: [...outward(e).reverse(), 0, ...outward(other)],
      places: [e, other],
      rest: [...steps(e).reverse(), first, first, ...steps(other)],
      natural,
    });
  });
  return [...spokes.sort((p, q) => p.index - q.index), ...laid];
}

/** Cells between the rings: four-sided where both ends go on, triangles at the hub and at a start. */
function cells(
  all: readonly Int32Array[],
  spans: readonly number[],
  ends: number,
): Pick<BasePart, 'cells' | 'triangles'> {
  const quads: BaseCell[] = [];
  const triangles: [number, number, number][] = [];
  const present = (nodes: Int32Array) =>
    Array.from({ length: ends }, (_, e) => e).filter((e) => nodes[e]! >= 0);
  const hubEnds = present(all[0]!);
  hubEnds.forEach((e, i) => {
    const next = hubEnds[(i + 1) % hubEnds.length]!;
    triangles.push([0, all[0]![next]!, all[0]![e]!]);
  });
  for (let r = 1; r < all.length; r++) {
    const [low, high] = [all[r - 1]!, all[r]!];
    const lowEnds = present(low);
    lowEnds.forEach((e, i) => {
      const next = lowEnds[(i + 1) % lowEnds.length]!;
      const between: number[] = [];
      for (let k = e; ; k = (k + 1) % ends) {
        if (high[k]! >= 0) between.push(k);
        if (k === next && between.length > 1) break;
      }
      if (between.length === 2) {
        const wide = (2 * Math.PI * (spans[r]! + spans[r - 1]!)) / (2 * ends);
        const nodes = [low[e]!, low[next]!, high[next]!, high[e]!] as const;
        quads.push({ nodes, wide, high: spans[r]! - spans[r - 1]! });
        return;
      }
      // A fan from the middle of what is new: its first half hangs on e, the rest on the next end.
      const turn = Math.floor(between.length / 2);
      for (let k = 0; k + 1 < between.length; k++) {
        const apex = k < turn ? low[e]! : low[next]!;
        triangles.push([apex, high[between[k + 1]!]!, high[between[k]!]!]);
      }
      triangles.push([low[e]!, low[next]!, high[between[turn]!]!]);
    });
  }
  return { cells: quads, triangles };
}
