/** Colours of dyed and undyed strand, by the names that a plan may give them. */

/** Red, green, blue, 0 … 255, as on a screen (sRGB). */
export type Colour = readonly [number, number, number];

const natural: Colour = [226, 199, 155];

/** The dyes of our own that are offered, undyed first. */
const offered: Readonly<Record<string, Colour>> = {
  natural,
  bleached: [238, 226, 202],
  honey: [205, 158, 88],
  smoked: [150, 118, 84],
  walnut: [112, 78, 54],
  black: [58, 54, 52],
  madder: [168, 70, 54],
  rust: [176, 96, 56],
  weld: [214, 176, 82],
  moss: [116, 124, 76],
  indigo: [62, 80, 130],
  plum: [112, 66, 96],
};

/** Words that a plan from elsewhere may use, not offered. */
const understood: Readonly<Record<string, Colour>> = {
  white: [240, 234, 220],
  grey: [140, 136, 128],
  brown: [122, 88, 62],
  bark: [84, 64, 50],
  red: [168, 58, 50],
  orange: [206, 128, 62],
  yellow: [218, 184, 92],
  green: [86, 118, 82],
  blue: [78, 108, 156],
  purple: [108, 76, 126],
};

const byName: ReadonlyMap<string, Colour> = new Map(Object.entries({ ...understood, ...offered }));

/** Names of the dyes that are offered, in their order. */
export const dyeNames: readonly string[] = Object.keys(offered);

/** Colour of a strand by the name the plan gives it, or `#rrggbb`; an unknown name is left undyed. */
export function strandColour(name: string): Colour {
  if (/^#[0-9a-f]{6}$/i.test(name)) {
    const value = Number.parseInt(name.slice(1), 16);
    return [value >> 16, (value >> 8) & 255, value & 255];
  }
  return byName.get(name.trim().toLowerCase()) ?? natural;
}

/** The same colour as `#rrggbb`. */
export function strandCss(name: string): string {
  return `#${strandColour(name)
    .map((part) => part.toString(16).padStart(2, '0'))
    .join('')}`;
}
