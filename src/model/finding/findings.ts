import type { Finding, Measured } from '../basket.ts';
import { countOfEnds } from './countOfEnds.ts';
import { edgeStrained } from './edgeStrained.ts';
import type { Find } from './family.ts';
import { flatRowsOff } from './flatRowsOff.ts';
import { girthNotReached } from './girthNotReached.ts';
import { handleNotHeld } from './handleNotHeld.ts';
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
  handleNotHeld,
  flatRowsOff,
  rocks,
  stakeGaps,
  tightBend,
  edgeStrained,
  rowPressed,
  strandTooShort,
  tipsEasily,
  notSettled,
];

const gravity: Record<Finding['severity'], number> = { stop: 0, warn: 1, note: 2 };

/** All that should be said about a settled basket, the gravest first. */
export function findings(reading: Measured): Finding[] {
  return all
    .flatMap((find) => find(reading))
    .sort((one, other) => gravity[one.severity] - gravity[other.severity]);
}
