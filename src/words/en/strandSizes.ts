/** Names that strands are sold by. */
export const strandSizeWords = {
  inches: (width: string) => `${width} in`,
  number: (number: string) => `No. ${number}`,
  cane: {
    carriage: 'carriage',
    superfine: 'superfine',
    fineFine: 'fine-fine',
    fine: 'fine',
    narrowMedium: 'narrow medium',
    medium: 'medium',
    common: 'common',
    binder: (width: string) => `${width} mm binder`,
  },
};
