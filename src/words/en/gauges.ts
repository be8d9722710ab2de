import type { Base } from '../../plan/schema.ts';

/** The full-size gauges. Lengths are written out, their unit included. */
export const gaugeWords = {
  fileTitle: (plan: string) => `${plan}: gauges`,
  foot: (plan: string, day: string) =>
    `${plan} · full-size gauges · ${day} · cut away from the hand`,
  /** Bars to measure. */
  bar: { metric: '100 mm', inches: '4 in' },
  printFull: 'Print at 100 %, and measure both bars.',
  /** A drawing cut into `across` × `down` pages. */
  piece: (drawing: string, piece: string, across: number, down: number) =>
    `${drawing}, piece ${piece} of ${across} × ${down}`,
  half: {
    title: { side: 'Side gauge', end: 'End gauge' },
    hold: {
      side: 'Side gauge: hold it against the middle of the end',
      end: 'End gauge: hold it against the middle of the side',
    },
    note: 'Cut the card out along the black line. Join pieces by their crosses.',
    table: 'table',
    middle: 'middle of the basket',
  },
  strip: {
    title: 'Tape strip',
    titleOf: (page: number, pages: number) => `Tape strip, ${page} of ${pages}`,
    note: (tab: string) =>
      `Cut out, glue end to end on the ${tab} tabs, wrap round: 0 meets the row’s mark.`,
    zero: '0: the row’s mark meets this end',
    /** Row numbers that stand before their mark, which is to the right of them. */
    leftOfMark: (rows: string) => `${rows} ›`,
    glueHere: (piece: number) => `glue ${piece} here`,
  },
  base: {
    title: 'Base template',
    size: (length: string, width: string, girth: string) => `${length} × ${width}, girth ${girth}`,
    note: {
      mat: 'Lay the damp base on it: edges, gaps and both diagonals.',
      oval: 'Lay the damp base on it: edge and gaps.',
      wheel: 'Lay the base on it as it grows: the edge, and every spoke in its place.',
      board: 'Lay the board on it: a stake at every pair of lines.',
    } satisfies Record<Base['kind'], string>,
  },
};
