import type { Strand } from '../../plan/schema.ts';

/** Strand by its section. */
export const strandWords = {
  sections: {
    flat: 'flat',
    'flat-oval': 'flat-oval',
    'half-round': 'half-round',
    round: 'round',
  } satisfies Record<Strand['section'], string>,
};
