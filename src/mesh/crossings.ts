/**
 * The places a strand passes: one record for each stake or weaver that it crosses.
 *
 *           bearing
 *        |<--------->|
 *     A ─┴───────────┴─ B               the strand lies flat on what it crosses from A to B
 *      ╱   crossing    ╲
 *   ──╯                 ╰──  A'         and changes sides in the gap from B to the next A'
 */

/** Numbers a record holds: see `field`. */
export const stride = 12;

/** Where in a record each number stands; a vector takes three places. */
export const field = {
  /** Middle of the strand, mm. */
  position: 0,
  /** Unit direction of travel, square to `normal`. */
  tangent: 3,
  /** Unit direction out of the basket (down in the base). */
  normal: 6,
  /** Half the length it lies flat for, mm. */
  bearing: 9,
  /** Width of the strand here, mm. */
  width: 10,
  /** How far the gap that follows bows aside, along normal × tangent, mm. */
  bow: 11,
} as const;

/** A strand as the places it passes, in order. */
export interface Crossings {
  readonly data: Float64Array;
  /** Number of each place (a stake's index, a row): becomes the vertices' `strand`. */
  readonly strand: Uint16Array;
  /** 1 where the strand lies flat for a while, 0 where it only passes. */
  readonly bears: Uint8Array;
  readonly count: number;
}

/** Room for `count` places. */
export function crossings(count: number): Crossings {
  return {
    data: new Float64Array(count * stride),
    strand: new Uint16Array(count),
    bears: new Uint8Array(count),
    count,
  };
}

/**
 * How many sections are drawn in the gap after place `at`: `between`, or none where the strand is sparse and
 * bears on neither side.
 */
export function sectionsAfter(
  { bears, count }: Crossings,
  at: number,
  between: number,
  sparse: boolean,
): number {
  const next = at + 1 < count ? at + 1 : 0;
  return sparse && bears[at] !== 1 && bears[next] !== 1 ? 0 : between;
}

/** How many sections a strand is drawn with, `between` of them in each gap. */
export function sectionCount(
  path: Crossings,
  between: number,
  closed: boolean,
  sparse: boolean,
): number {
  let count = 0;
  const gaps = closed ? path.count : path.count - 1;
  for (let at = 0; at < path.count; at += 1) {
    count += path.bears[at] === 1 ? 2 : 1;
    if (at < gaps) count += sectionsAfter(path, at, between, sparse);
  }
  return count;
}
