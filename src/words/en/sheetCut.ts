import { capital } from './capital.ts';

/** What to cut, what to weave with and what to buy. Lengths are written out, their unit included. */
export const sheetCutWords = {
  cut: {
    heading: 'Cut list',
    done: 'Done',
    piece: 'Piece',
    /** `part` as in `partWords`. */
    pieceName: (part: string) => capital(part),
    count: 'How many',
    length: 'Cut length',
    from: 'From',
    note: (step: string, tuck: string, lap: string, thinned: string, gaps: number) =>
      `Cut lengths are rounded up to ${step}; stakes have ${tuck} to tuck at each end. ` +
      `Hoop ends lap ${lap}: thin each over ${thinned}. The lasher goes through ${gaps} gaps.`,
    wrap: (turns: number) =>
      `The handle takes ${turns} turns of wrap, wound edge to edge over all of its bow.`,
  },
  weavers: {
    heading: 'Weavers',
    rows: 'Rows',
    weaver: 'Weaver',
    weave: 'Weave',
    length: 'In all',
    strands: 'Strands',
    ends: 'Ends',
    /** What is said of the ends; they stand one behind another. */
    pieceARow: (length: string) => `${length} a row`,
    lap: (stakes: number, length: string) => `lap ${stakes} stakes (${length})`,
    thinStart: (length: string) => `thin the start over ${length}`,
    thinEnd: (length: string) => `thin the end over ${length}`,
    together: (length: string) =>
      `${length} together, as the summary has it; each line is rounded up. Laps are counted, waste is not.`,
  },
  buy: {
    heading: 'Materials to buy',
    headingForClass: (baskets: number) => `Materials for a class of ${baskets}`,
    note: (weight: string, wastePercent: number) =>
      `One basket weighs about ${weight} and takes the lengths below with ${wastePercent} % for waste. ` +
      'Yields are rough (15 to 20 % either way): ask the supplier. ' +
      'Of each size one line; long stakes want long strands.',
    strand: 'Strand',
    use: 'For',
    length: 'Length',
    lengthFor: (baskets: number) => `Length for ${baskets}`,
    buy: 'Buy',
    holds: 'A coil or hank holds',
  },
  feet: (amount: string) => `${amount} ft`,
  metres: (amount: string) => `${amount} m`,
};
