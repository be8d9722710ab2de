import type { Finding } from '../basket.ts';
import type { Reading } from '../read/readBasket.ts';
import { countOfEnds } from './countOfEnds.ts';
import type { Find } from './family.ts';
import { girthNotReached } from './girthNotReached.ts';
import { notSettled } from './notSettled.ts';
import { rocks } from './rocks.ts';
import { rowPressed } from './rowPressed.ts';
import { ruffles } from './ruffles.ts';
import { stakeGaps } from './stakeGaps.ts';
import { stakeStretched } from './stakeStretched.ts';
import { strandTooShort } from './strandTooShort.ts';
import { tightBend } from './tightBend.ts';
import { tipsEasily } from './tipsEasily.ts';

const all: readonly Find[] = [
  countOfEnds,
  ruffles,
  girthNotReached,
  stakeStretched,
  rocks,
  stakeGaps,
  tightBend,
  rowPressed,
  strandTooShort,
  tipsEasily,
  notSettled,
];

const gravity: Record<Finding['severity'], number> = { stop: 0, warn: 1, note: 2 };

/** All that should be said about a settled basket, the gravest first. */
export function findings(reading: Reading): Finding[] {
  return all
    .flatMap((find) => find(reading))
    .sort((one, other) => gravity[one.severity] - gravity[other.severity]);
}
