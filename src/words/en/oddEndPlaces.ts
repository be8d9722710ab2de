import type { OddEnd } from '../../plan/schema.ts';

type Places = Readonly<Record<OddEnd['at'], string>>;

/** Where the odd end stands: in a list, and in a sentence behind what is done there. */
export const oddEndPlaceWords = {
  names: {
    'middle of a long side': 'middle of a long side',
    'middle of a short side': 'middle of a short side',
    corner: 'corner',
  } satisfies Places,
  at: {
    'middle of a long side': 'at the middle of a long side',
    'middle of a short side': 'at the middle of a short side',
    corner: 'at the corner',
  } satisfies Places,
};
