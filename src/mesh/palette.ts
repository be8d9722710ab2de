/** Colours of strands: a few dyes of our own, and the small differences between one strand and the next. */

/** Red, green, blue, 0 … 255, as on a screen (sRGB). */
export type Colour = readonly [number, number, number];

const natural: Colour = [226, 199, 155];

/** Dyed and undyed strand by name. */
const dyes: Readonly<Record<string, Colour>> = {
  natural,
  bleached: [238, 226, 202],
  honey: [205, 158, 88],
  smoked: [150, 118, 84],
  walnut: [112, 78, 54],
  bark: [84, 64, 50],
  black: [58, 54, 52],
  grey: [140, 136, 128],
  madder: [168, 70, 54],
  red: [168, 58, 50],
  rust: [176, 96, 56],
  orange: [206, 128, 62],
  weld: [214, 176, 82],
  yellow: [218, 184, 92],
  moss: [116, 124, 76],
  green: [86, 118, 82],
  indigo: [62, 80, 130],
  blue: [78, 108, 156],
  plum: [112, 66, 96],
  purple: [108, 76, 126],
  white: [240, 234, 220],
  brown: [122, 88, 62],
};

/** Colour of a strand by the name the plan gives it, or `#rrggbb`; an unknown name is left undyed. */
export function strandColour(name: string): Colour {
  if (/^#[0-9a-f]{6}$/i.test(name)) {
    const value = Number.parseInt(name.slice(1), 16);
    return [value >> 16, (value >> 8) & 255, value & 255];
  }
  return dyes[name.trim().toLowerCase()] ?? natural;
}

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
