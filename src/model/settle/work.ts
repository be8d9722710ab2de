import type { Net } from '../net/net.ts';
import type { Elements } from './elements.ts';
import { elements } from './elements.ts';
import type { Evaluation, Frames, Tensions } from './energy.ts';
import { evaluation } from './energy.ts';
import type { Fold } from './fold.ts';
import { fold, pick } from './fold.ts';
import { frames } from './frames.ts';
import type { Skyline } from './skyline.ts';
import { stiffness } from './stiffness.ts';

/** A net being settled: its shape, its tensions, and what is kept from step to step. */
export interface Work {
  readonly net: Net;
  readonly folded: Fold;
  readonly elements: Elements;
  readonly tensions: Tensions;
  readonly frames: Frames;
  readonly matrix: Skyline;
  readonly out: Evaluation;
  /** Positions of the leads and of all nodes, x, y, z each, mm. */
  readonly lead: Float64Array;
  readonly x: Float64Array;
  /** True while `matrix` holds a factor that is good enough to step with. */
  factored: boolean;
  /** True when the shape is known to be near balance, so that the settling need not feel its way. */
  close: boolean;
}

/**
 * Sets up the settling of `net` from its start shape. `set` (0 … 1) is the stakes' set; `planes: 'none'`
 * leaves the mirror planes unused.
 */
export function work(net: Net, set: number, planes: 'all' | 'none' = 'all'): Work {
  const folded = fold(net, planes);
  const list = elements(net, folded, set);
  return {
    net,
    folded,
    elements: list,
    tensions: {
      segment: new Float64Array(list.segment.rest.length),
      loop: new Float64Array(list.loop.target.length),
      lift: new Float64Array(1),
    },
    frames: frames(list),
    matrix: stiffness(list, folded),
    out: evaluation(list, net.nodeCount),
    lead: pick(folded, net.start),
    x: Float64Array.from(net.start),
    factored: false,
    close: false,
  };
}

/**
 * The work on a net that couples the same nodes as `last.net` but has other lengths or stiffnesses:
 * shape, tensions and factor are carried on, so the settling starts next to its end.
 */
export function renewed(last: Work, net: Net, set: number): Work {
  const list = elements(net, last.folded, set);
  return { ...last, net, elements: list, frames: frames(list), close: true };
}

/** True when both nets couple the same nodes in the same way. */
export function sameTopology(a: Net, b: Net): boolean {
  return (
    a.nodeCount === b.nodeCount &&
    a.baseNodeCount === b.baseNodeCount &&
    a.rows.length === b.rows.length &&
    a.stakes.length === b.stakes.length &&
    a.quads.length === b.quads.length &&
    a.flatRows.length === b.flatRows.length &&
    a.ties.length.length === b.ties.length.length &&
    a.heldWidths.length.length === b.heldWidths.length.length &&
    (a.lift === null) === (b.lift === null) &&
    a.ends.every((end, e) => end.side === b.ends[e]?.side && end.stake === b.ends[e]?.stake) &&
    a.frame.every((node, i) => node === b.frame[i])
  );
}
