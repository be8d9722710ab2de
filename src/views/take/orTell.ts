/** What is done with the shelf where the browser may refuse. */
import { takeWords } from '#words/take.ts';
import { nameOf } from '../../keep/shelf/openShelf.ts';
import { tellOnShelf } from './told.ts';

/** Thrown where something is not done, for reasons that are in words already. */
export class Refused extends Error {
  readonly reasons: readonly string[];

  constructor(reasons: readonly string[]) {
    super(reasons.join('\n'));
    this.reasons = reasons;
  }
}

/** Does `act`; where it rejects, the shelf says `failed` and why. Gives whether it was done. Never rejects. */
export async function orTell(failed: string, act: () => Promise<unknown>): Promise<boolean> {
  try {
    await act();
    return true;
  } catch (error) {
    const problems = error instanceof Refused ? error.reasons : [refusalText(error)];
    tellOnShelf({ done: failed, problems });
    return false;
  }
}

/** In words, why the browser's database refused. */
export function refusalText(error: unknown): string {
  const name = nameOf(error);
  if (name === 'QuotaExceededError') return takeWords.refused.full;
  if (name === 'InvalidStateError') return takeWords.refused.closed;
  return takeWords.refused.other;
}
