/**
 * What each weave takes and asks for: one table. Numbers in brackets are pages of the trade: [1] How much
 * reed is needed, [33] Design series 2, [37] Quantity of spokes, [41] Terminology 101, [42] Sewing basket,
 * [44] and [45] glossaries of two guilds. `computed` follows from the geometry of the weave itself.
 */
import type { Strand, Weave } from './schema.ts';

export interface WeaveFacts {
  /** Stakes after which over and under repeat: 2 for over one, under one; 4 for over two, under two. */
  readonly period: 2 | 4;
  /** Counts of ends that it goes with. */
  readonly ends: 'odd' | 'even' | 'any' | 'odd-or-steps';
  /** Strands that lie side by side in one row, turned about each other. */
  readonly strandsInRow: 1 | 2;
  /** Weavers on their way at once, each in rows of its own. */
  readonly weavers: 1 | 2;
  /** Rows that one weaver climbs in a turn; 0 where every row closes on itself and laps its own start. */
  readonly climb: 0 | 1 | 2;
  /** The first and the last end are thinned, since they lie where the spiral starts and runs out. */
  readonly tapers: boolean;
  /** Wall that a row takes up when butted tight: the width of its weaver, or two thicknesses. */
  readonly takes: 'width' | 'thicknesses';
  /**
   * How it goes round the stakes, over and under in a wave or as a helix, which tells its crimp; see
   * `model/quantity/crimp.ts`.
   */
  readonly path: 'wave' | 'helix';
}

export const weaveFacts: Readonly<Record<Weave, WeaveFacts>> = {
  continuous: {
    period: 2,
    ends: 'odd', // [37] [41]
    strandsInRow: 1,
    weavers: 1,
    climb: 1, // computed: the loop opens by one pitch a turn
    tapers: true, // common practice, no source
    takes: 'width',
    path: 'wave',
  },
  rounds: {
    period: 2,
    ends: 'even', // [37]; a base of 29 could not take it [42]
    strandsInRow: 1,
    weavers: 1,
    climb: 0, // [1]: each row is the way round and its lap
    tapers: false,
    takes: 'width',
    path: 'wave',
  },
  twined: {
    period: 2,
    ends: 'any', // from memory
    strandsInRow: 2,
    weavers: 1,
    climb: 1, // computed
    tapers: false,
    // Two strands cross between the stakes, one over the other: 3.5 mm for #2 round (1.75 mm) butted tight,
    // 3.7 mm at the usual packing; published patterns come to 3.5–4 mm a row (docs/design-file.md).
    takes: 'thicknesses',
    path: 'helix',
  },
  chased: {
    period: 2,
    ends: 'even', // [41] [44] [45]
    strandsInRow: 1,
    weavers: 2,
    climb: 2, // computed: each weaves every other row
    tapers: true, // common practice, no source
    takes: 'width',
    path: 'wave',
  },
  twill: {
    period: 4,
    ends: 'odd-or-steps', // computed; some twills need odd counts [33]
    strandsInRow: 1,
    weavers: 1,
    climb: 1, // computed
    tapers: true, // common practice, no source
    takes: 'width',
    path: 'wave',
  },
};

/** Wall that a row takes up, butted tight, mm. */
export function tightPitch(weave: Weave, weaver: Strand): number {
  return weaveFacts[weave].takes === 'width' ? weaver.width : 2 * weaver.thickness;
}

/**
 * Way that a weaver makes in one turn, mm: a helix that climbs one pitch (or two, of two weavers that
 * chase) while it goes round once, √(G² + p²); a row that closes on itself goes round and no more.
 *
 * @param girth girth of the row
 * @param pitch wall that it takes up
 */
export function turnLength(weave: Weave, girth: number, pitch: number): number {
  return Math.hypot(girth, weaveFacts[weave].climb * pitch);
}

/**
 * How a weave gets on with a count of ends. `repeats`: every row would lie as the one below. `unmet`: over
 * and under do not meet where the row closes. `no diagonal`: a twill that steps two stakes at a time.
 */
export type CountFit = 'fits' | 'repeats' | 'unmet' | 'no diagonal';

export function countFit(weave: Weave, ends: number): CountFit {
  const isOdd = ends % 2 === 1;
  switch (weaveFacts[weave].ends) {
    case 'any':
      return 'fits';
    case 'odd':
      return isOdd ? 'fits' : 'repeats';
    case 'even':
      return isOdd ? 'unmet' : 'fits';
    case 'odd-or-steps':
      if (isOdd) return 'fits';
      return twillStep(ends) === 0 ? 'repeats' : 'no diagonal';
  }
}

/**
 * Stakes that a 2/2 twill steps from a row to the next: what `ends` leaves over from fours, 3 being one the
 * other way. A step of 1 climbs against the way the weaver goes, −1 along with it, 2 shows no diagonal, and
 * 0 lays every row as the one below. Computed: round k starts k·ends strokes on, and strokes repeat in fours.
 */
export function twillStep(ends: number): -1 | 0 | 1 | 2 {
  const over = ends % 4;
  if (over === 0) return 0;
  if (over === 2) return 2;
  return over === 1 ? 1 : -1;
}
