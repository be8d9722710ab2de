import type { Plan } from '../plan/schema.ts';
import type { Net, Side } from './net/net.ts';

/** How the settling went. */
export interface Settling {
  /** Iterations used, and how many of them factored the stiffness anew. */
  readonly iterations: number;
  readonly factorisations: number;
  /** True when the last steps and the length residuals came under their limits. */
  readonly converged: boolean;
  /** Largest move of a node in the last step, mm. */
  readonly lastStep: number;
  /** Largest relative departure of a girth from its target, and of a stake segment from its length. */
  readonly worstGirthError: number;
  readonly worstStakeStretch: number;
  /** Tension in each row's weaver, relative (force over Young's modulus, mm²); index = row. */
  readonly rowTension: Float64Array;
}

/** One row as read off the settled basket. Lengths mm, angles degrees. */
export interface RowReading {
  readonly row: number;
  /** Planned and reached length of the loop in the middle of the wall. */
  readonly girth: number;
  readonly girthReached: number;
  /** What a tape pulled round the outside reads. */
  readonly tapeGirth: number;
  /** Change of tape girth from the row before; positive opens. */
  readonly change: number;
  readonly changePerGap: number;
  /** Widths across, x and y, outside faces. */
  readonly length: number;
  readonly width: number;
  /** Height of the row's middle line over the table, at mid-sides (mean) and at corners (mean). */
  readonly heightSide: number;
  readonly heightCorner: number;
  /** Mean angle of the stakes from the vertical, outward positive, and the largest. */
  readonly lean: number;
  readonly leanMost: number;
  /** Clear gap between neighbouring stakes. */
  readonly gapLeast: number;
  readonly gapMost: number;
  /** Share by which one edge of the weaver is longer than its middle, since the row curves in the wall. */
  readonly edgeStrain: number;
  /** Wall woven so far along a stake, to the top of this row. */
  readonly wall: number;
}

/** One end as read off: its path from the base edge to the rim. */
export interface StakeReading {
  readonly end: number;
  readonly side: Side;
  /** Length of stake from the middle of the base to the top of the wall, and the tuck. */
  readonly lengthNeeded: number;
  /** Smallest radius of bend along the end, mm. */
  readonly tightestBend: number;
  readonly path: readonly (readonly [number, number, number])[];
}

export interface CutPart {
  readonly part: string;
  readonly count: number;
  readonly length: number;
  readonly section: string;
  readonly width: number;
}

export interface Finding {
  /** What it is about, a stable short name such as 'rocks' or 'girth-not-reached'. */
  readonly kind: string;
  /** 'stop': cannot be woven as planned; 'warn': look at it; 'note': worth knowing. */
  readonly severity: 'stop' | 'warn' | 'note';
  /** First row it speaks of; null for the base or the whole basket. */
  readonly row: number | null;
  /** All rows it speaks of, where more than one. */
  readonly rows: readonly number[];
  readonly value: number;
  readonly limit: number;
  /** Plain words, lengths in mm written as {mm:12.3} (`plan/lengthText.ts`) so that the view can show the plan's unit. */
  readonly text: string;
}

export interface Summary {
  readonly ends: number;
  readonly rows: number;
  readonly baseGirth: number;
  readonly baseLength: number;
  readonly baseWidth: number;
  /** Of the wall, over the table, mm: the rim is not in it. */
  readonly height: number;
  /** To the top of the lashed rim, mm; a handle goes higher. */
  readonly heightWithRim: number;
  readonly belly: { readonly row: number; readonly tapeGirth: number };
  readonly rim: { readonly tapeGirth: number; readonly length: number; readonly width: number };
  /** How far the feet stand below the middles of the base edges, and the clearance under the base's middle. */
  readonly footHeight: number;
  readonly centreClearance: number;
  /** Number of separate places the basket stands on. */
  readonly feet: number;
  /** Inside volume to the lowest point of the rim, mm³. */
  readonly capacity: number;
  /** Angle the empty basket can be tilted before it tips, degrees. */
  readonly tipAngle: number;
  /** Woven wall, base left out, measured in its middle, mm². */
  readonly wallArea: number;
  /** Weavers of all bands with crimp and laps, waste left out, mm. */
  readonly weaverLength: number;
  /** All strand in the finished basket, rim and handle with it, g. */
  readonly weight: number;
  readonly iterations: number;
  readonly worstGirthError: number;
  readonly worstStakeStretch: number;
}

/** A basket read off, before anything is added up or said about it. */
export interface Measured extends Omit<Basket, 'findings' | 'summary'> {
  readonly summary: Omit<Summary, 'heightWithRim' | 'weaverLength' | 'weight'>;
}

/** The settled basket: one read-only record that charts, stage and sheets are made from. */
export interface Basket {
  readonly plan: Plan;
  readonly net: Net;
  /** x, y, z of each node, mm; z up, standing on z = 0, base centred on the z axis. */
  readonly positions: Float64Array;
  readonly settling: Settling;
  readonly summary: Summary;
  /** Row 1 … R at index 0 … R − 1. */
  readonly rows: readonly RowReading[];
  readonly stakes: readonly StakeReading[];
  readonly cutList: readonly CutPart[];
  readonly findings: readonly Finding[];
}
