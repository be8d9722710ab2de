/** Bands in the plan panel. Bands are counted from 1 at the base; an `act` is what can be undone. */
export const bandWords = {
  name: (band: number) => `Band ${band}`,
  gist: (rows: number, weave: string, colour: string) => `${rows} rows, ${weave}, ${colour}`,
  earlier: 'Earlier',
  later: 'Later',
  remove: (band: number) => `Remove band ${band}`,
  add: 'Add a band at the rim',
  noRoom: (most: number) => `Rows: at most ${most} in all bands; there is no room for another band`,
  tooMany: (most: number, found: number) => `Rows: at most ${most} in all bands; found ${found}`,
  labels: { rows: 'Rows', weave: 'Weave', packing: 'Packing', colour: 'Colour' },
  acts: {
    order: 'the order of the bands',
    add: 'adding a band',
    remove: (band: number) => `taking band ${band} away`,
    rows: (band: number) => `the rows of band ${band}`,
    weave: (band: number) => `the weave of band ${band}`,
    packing: (band: number) => `the packing of band ${band}`,
    colour: (band: number) => `the colour of band ${band}`,
    weaver: {
      section: (band: number) => `the weaver section of band ${band}`,
      size: (band: number) => `the weaver size of band ${band}`,
      width: (band: number) => `the weaver width of band ${band}`,
      thickness: (band: number) => `the weaver thickness of band ${band}`,
    },
  },
};
