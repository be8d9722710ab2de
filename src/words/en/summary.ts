/** The settled basket in a few numbers. */
export const summaryWords = {
  title: 'Summary',
  height: {
    name: 'Height',
    /** Beside the height of the wall. */
    withRim: (height: string) => `wall; with rim ${height}`,
  },
  belly: { name: 'Belly', atRow: (row: number) => `at row ${row}` },
  rim: 'Rim',
  capacity: {
    name: 'Capacity',
    litres: (figure: string) => `${figure} litres`,
    bushels: (figure: string) => `${figure} bu`,
    pecks: (figure: string) => `${figure} pk`,
    dryQuarts: (figure: string) => `${figure} dry qt`,
  },
  standsOn: {
    name: 'Stands on',
    feetHigh: (height: string) => `${height} high`,
    /** In words up to four, so that nobody reads a length in feet. */
    feet: (feet: number) => `${['no', 'one', 'two', 'three', 'four'][feet] ?? feet} feet`,
    places: (places: number) => `${places} places`,
    edge: 'its whole edge',
  },
  clear: 'Clear under the middle',
  tips: { name: 'Tips at', aside: 'tilted, empty' },
  weaver: { name: 'Weaver', ofWall: (area: string) => `${area} of wall` },
  weight: { name: 'Weight', aside: 'rim and handle with it' },
  base: { name: 'Base', girth: (girth: string) => `girth ${girth}` },
  counts: {
    name: 'Ends and rows',
    text: (ends: number, rows: number) => `${ends} ends, ${rows} rows`,
  },
  /** Areas, strands and weights, too large or too rough for a tape. */
  units: {
    squareInches: (figure: string) => `${figure} in²`,
    squareCentimetres: (figure: string) => `${figure} cm²`,
    feet: (figure: string) => `${figure} ft`,
    metres: (figure: string) => `${figure} m`,
    ounces: (figure: string) => `${figure} oz`,
    grams: (figure: string) => `${figure} g`,
  },
};
