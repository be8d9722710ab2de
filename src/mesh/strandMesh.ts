/** A strand to draw, and strands drawn: plain records. */

import type { Colour } from '../plan/dyes.ts';
import type { Crossings } from './crossings.ts';
import type { Section } from './section.ts';

/** Triangles of many strands. Winding is counter-clockwise seen from outside the strand. */
export interface StrandMesh {
  /** x, y, z of each vertex, mm, z up. */
  readonly positions: Float32Array;
  /** Unit normal of each vertex. */
  readonly normals: Float32Array;
  /** Three vertices a triangle. */
  readonly indices: Uint32Array;
  /** Stake index or row number of each vertex. */
  readonly strand: Uint16Array;
  /** Red, green, blue of each vertex, 0 … 255 (sRGB). */
  readonly colour: Uint8Array;
}

/** One strand to draw. */
export interface Strand {
  /** What it is called where strands are told apart, such as 'lengthwise stake 3'. */
  readonly name: string;
  /** True of a lashing, which passes through the wall where it is thinned. */
  readonly isThrough?: boolean;
  readonly path: Crossings;
  readonly section: Section;
  /** Thickness through the wall, mm. */
  readonly thickness: number;
  /** Share of the thickness that is left at each place, where the strand is thinned. */
  readonly thinned?: Float64Array;
  readonly colour: Colour;
  /** Picks its variation of tone. */
  readonly seed: number;
  /** Sections drawn in each gap. */
  readonly between: number;
  /** True where places that only pass lie so close that nothing need be drawn between them. */
  readonly sparse?: boolean;
  /** True when the last place leads on to the first. */
  readonly closed: boolean;
}
