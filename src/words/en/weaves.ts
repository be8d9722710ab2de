import type { Weave } from '../../plan/schema.ts';

type Weaves = Readonly<Record<Weave, string>>;

/** How each weave is called. */
export const weaveWords = {
  /** In a sentence, several or one as it comes. */
  inSentence: {
    continuous: 'one weaver that goes round and round',
    rounds: 'rows that start and stop',
    twined: 'twined strands',
    chased: 'two weavers that chase one another',
    twill: 'a twill over two and under two',
  } satisfies Weaves,
  /** In a list to choose from. */
  names: {
    continuous: 'continuous',
    rounds: 'start-stop rounds',
    twined: 'twined',
    chased: 'chased',
    twill: 'twill, two by two',
  } satisfies Weaves,
  /** Where there is room for one word. */
  short: {
    continuous: 'continuous',
    rounds: 'start-stop',
    twined: 'twined',
    chased: 'chased',
    twill: 'twill',
  } satisfies Weaves,
};
