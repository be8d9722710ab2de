import type { Stake } from '../../model/net/net.ts';

/** Strands of the drawn basket that are no pieces of the cut list, as files for other programs name them. */
export const drawnWords = {
  /** Stakes by their number among their fellows. */
  stakes: {
    lengthwise: (number: number) => `lengthwise stake ${number}`,
    crosswise: (number: number) => `crosswise stake ${number}`,
    spoke: (number: number) => `spoke ${number}`,
    fanned: (number: number) => `fanned stake ${number}`,
    stake: (number: number) => `stake ${number}`,
    added: (number: number) => `added stake ${number}`,
  } satisfies Record<Stake['part'], (number: number) => string>,
  weaverOfRows: (first: number, last: number) => `weaver of rows ${first} to ${last}`,
  weaverOfRow: (row: number) => `weaver of row ${row}`,
  secondWeaverOfRow: (row: number) => `second weaver of row ${row}`,
  weaverOfFlatRows: 'weaver of the flat rows',
  tuck: (end: number, stake: string) => `tuck of end ${end}, ${stake}`,
  lashing: 'lashing',
  ear: (number: number) => `ear ${number}`,
  board: 'board',
};
