import type { Stake } from '../../model/net/net.ts';

/** Pieces to cut, as the cut list calls them and, in files for other programs, the strands drawn of them. */
export const partWords = {
  stakes: {
    lengthwise: 'lengthwise stake',
    crosswise: 'crosswise stake',
    spoke: 'spoke',
    fanned: 'corner stake',
    stake: 'stake',
    added: 'added stake',
  } satisfies Record<Stake['part'], string>,
  splitStake: (stake: string) => `${stake}, split at one end`,
  fillers: {
    lengthwise: 'lengthwise filler',
    crosswise: 'crosswise filler',
  },
  outsideHoop: 'outside hoop',
  insideHoop: 'inside hoop',
  rimFiller: 'rim filler',
  lasher: 'lasher',
  ear: 'ear',
  handleBow: 'handle bow',
  handleWrap: 'handle wrap',
};
