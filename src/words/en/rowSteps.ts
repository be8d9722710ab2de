import type { Weave } from '../../plan/schema.ts';
import { capital } from './capital.ts';

/** What is to be done at a row besides weaving it. */
export const rowStepWords = {
  /** All of a row, as they stand one behind another. */
  together: (steps: readonly string[]) => capital(steps.join('; ')),
  weaver: (strand: string, how: string) => `${strand}: ${how}`,
  start: {
    continuous: 'start thin',
    rounds: 'one strand a row, start and stop',
    twined: 'twine, two strands',
    chased: 'two weavers, one chasing the other',
    twill: 'over two, under two',
  } satisfies Record<Weave, string>,
  joinOn: 'join on',
  newWeaver: 'new weaver about here',
  shortWeaver: (next: number) => `new weaver about here, a short one: row ${next} takes another`,
  pinned: 'corners pinned',
  pinsOff: 'pins off',
  fanned: 'lay the row flat round the base',
  turnUp: 'turn the sides up',
  letOut: 'let out',
  pullIn: 'pull in',
  keep: 'keep the girth',
  widest: (girth: string) => `widest: ${girth}`,
  endThin: (length: string) => `end thin over ${length}, above where it began`,
  last: 'last row',
};
