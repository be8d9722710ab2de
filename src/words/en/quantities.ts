/** What strand is for, what it is sold by, and where the figures come from. */
export const quantityWords = {
  stakes: 'stakes',
  rows: (first: number, last: number) =>
    first === last ? `row ${first}` : `rows ${first}–${last}`,
  hoops: 'hoops',
  ears: 'ears',
  sold: {
    poundCoil: '1 lb coil',
    bundle: '500 g bundle',
    hank: '1000 ft hank',
    halfHank: '500 ft half hank',
    caneCoil: '500 ft coil',
  },
  sources: {
    published: 'published',
    memory: 'from memory',
    computed: 'computed',
  },
};
