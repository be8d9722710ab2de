/**
 * How much longer a strand is than the way it makes: it goes over and under.
 *
 *      ╭─w─╮         ╭───╮        D = stake + weaver (thicknesses)
 *   ─╯  |s|  ╲     ╱  |s|         p = spacing of the stakes
 *              ╰─w─╯              x = D / p
 */

/**
 * Crimp of a weaver round straight stakes, as a share of its way: Peirce's exact model with all the
 * crimp in one thread, c = x·asin x + √(1 − x²) − 1 (docs/shaping-model.md; F. T. Peirce, J. Text.
 * Inst. 28 (1937) T45). At x = 1 the stakes jam; nothing denser can be woven, so x stops there.
 */
export function peirceCrimp(x: number): number {
  if (!(x >= 0)) throw new RangeError(`x is ${x}, allowed a number from 0`);
  const dense = Math.min(x, 1);
  return dense * Math.asin(dense) + Math.sqrt(1 - dense * dense) - 1;
}

/**
 * Crimp of one strand of a twined pair: a helix, √(1 + (2πρ/λ)²) − 1. The pair makes a whole turn
 * in two spacings; ρ is the root of the mean square of how far the strand swings through the wall,
 * (stake + weaver)/2, and across it, weaver/2.
 */
export function helixCrimp(stake: number, weaver: number, spacing: number): number {
  const through = (stake + weaver) / 2;
  const across = weaver / 2;
  const radius = Math.sqrt((through * through + across * across) / 2);
  return Math.hypot(1, (Math.PI * radius) / spacing) - 1;
}
