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
  weaverOfRows: (first: number, last: number) => `weaver of ${rows(first, last)}`,
  secondWeaverOfRows: (first: number, last: number) => `second weaver of ${rows(first, last)}`,
  weaverOfFlatRows: 'weaver of the flat rows',
  tuck: (end: number, stake: string) => `tuck of end ${end}, ${stake}`,
  lashing: 'lashing',
  ear: (number: number) => `ear ${number}`,
  board: 'board',
};

function rows(first: number, last: number): string {
  return first === last ? `row ${first}` : `rows ${first} to ${last}`;
}
