/** Tails to start and to end with: 6 in. */
const tails = 152.4;

/**
 * Length of a single lashing, mm: a turn in each of `lashes` gaps between stakes, each turn going
 * round the rim's bundle (`bundle` mm round) and on to the next gap. Our model, held to a measured
 * rim: 28 in round with 28 gaps and a bundle of 2 1/2 in took 82 in, and this gives 81.
 */
export function lasherLength(lashes: number, girth: number, bundle: number): number {
  return lashes * Math.hypot(bundle, girth / lashes) + tails;
}
