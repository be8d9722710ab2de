import type { Section } from '../../model/quantity/part.ts';

/** A strand as makers ask for it: `11/64 in flat oval`, `6.4 mm flat, walnut`. */
export const strandNameWords = {
  plain: (width: string, section: string) => `${width} ${section}`,
  dyed: (width: string, section: string, colour: string) => `${width} ${section}, ${colour}`,
  thick: (width: string, section: string, thickness: string) =>
    `${width} ${section} ${thickness} thick`,
  thickDyed: (width: string, section: string, thickness: string, colour: string) =>
    `${width} ${section} ${thickness} thick, ${colour}`,
  section: {
    flat: 'flat',
    'flat-oval': 'flat oval',
    'half-round': 'half round',
    round: 'round',
    cane: 'cane',
  } satisfies Record<Section, string>,
  millimetres: (amount: number) => `${amount} mm`,
  /** The amount is a whole number or a fraction, as `11/64`. */
  inches: (amount: string) => `${amount} in`,
};
