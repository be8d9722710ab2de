import type { Weave } from '../../plan/schema.ts';

/** How each weave is called in a sentence. */
export const weaveWords = {
  continuous: 'one weaver that goes round and round',
  rounds: 'rows that start and stop',
  twined: 'twined strands',
  chased: 'two weavers that chase one another',
  twill: 'a twill over two and under two',
} satisfies Record<Weave, string>;
