/** The small differences of tone between one strand and the next. */

/**
 * How light strand number `seed` is against its fellows at `place` (any unit, one step a change of
 * tone): 0.92 … 1.05, the same every time.
 */
export function tone(seed: number, place: number): number {
  const step = Math.floor(place);
  const part = place - step;
  const ease = part * part * (3 - 2 * part);
  const along = (1 - ease) * noise(seed, step) + ease * noise(seed, step + 1);
  return 0.985 + 0.07 * (noise(seed, -1) - 0.5) + 0.06 * (along - 0.5);
}

/** A number in 0 … 1 that looks random and depends on its two whole arguments alone. */
function noise(one: number, other: number): number {
  let mixed = Math.imul(one + 1, 0x9e3779b1) ^ Math.imul(other + 7, 0x85ebca6b);
  mixed = Math.imul(mixed ^ (mixed >>> 15), 0x2c1b3c6d);
  mixed = Math.imul(mixed ^ (mixed >>> 12), 0x297a2d39);
  return ((mixed ^ (mixed >>> 15)) >>> 0) / 4294967296;
}
