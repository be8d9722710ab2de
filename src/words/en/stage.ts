/** The stage: the basket, ways to look at it, what else it shows, and how its settling stands. */
export const stageWords = {
  basket: 'Basket',
  waiting: 'Laying the table …',
  unsettled: 'The basket is being settled',
  /** What the picture shows, for those who do not see it. Lengths are written out. */
  picture: (read: {
    height: string;
    rimLength: string;
    rimWidth: string;
    bellyRow: number;
    ends: number;
    rows: number;
  }) =>
    `Woven basket, its wall ${read.height} high, ${read.rimLength} by ${read.rimWidth} across the rim, widest at row ${read.bellyRow}; ${read.ends} ends and ${read.rows} rows`,
  noWebgl:
    'The basket cannot be shown in three dimensions here (that takes WebGL), so it is drawn in outline. All else works as it should.',

  lookFrom: 'Look at the basket from',
  /** On their buttons. */
  views: {
    quarter: 'Three-quarter',
    side: 'Side',
    end: 'End',
    top: 'Top',
    underside: 'Underside',
  },
  viewNames: {
    quarter: 'Three-quarter view',
    side: 'Side view',
    end: 'End view',
    top: 'Top view',
    underside: 'Underside view',
  },
  viewWithKey: (view: string, key: number) => `${view} (key ${key})`,

  show: 'Show on the stage',
  rowByRow: 'Row by row',
  outline: 'Outline',
  sizes: 'Sizes',
  colourBy: 'Colour rows by',
  ownColours: 'Own colours',
  /** What the choice of colours calls them, in few letters. */
  tintNames: {
    lean: 'Lean',
    gap: 'Stake gaps',
    strain: 'Edge strain',
  },
  tintTitles: {
    lean: 'Lean of the wall',
    gap: 'Least gap between stakes',
    strain: 'Strain of the weaver’s edge',
  },

  save: {
    menu: 'Save as',
    png: 'Picture (PNG)',
    svg: 'Outlines (SVG)',
    glb: 'Model with strands (GLB)',
    stl: 'Solid for a mould (STL)',
    failed: (why: string) => `This could not be written: ${why}`,
    noPicture: 'the browser gave no picture',
  },

  /** Beside the lines on the stage. Lengths are written out. */
  table: 'table',
  wall: (height: string) => `wall ${height}`,
  feet: (height: string) => `feet ${height} high`,
  middle: (clearance: string) => `middle ${clearance} clear`,
  tape: (row: number, girth: string) => `Row ${row}: tape ${girth}`,

  settling: 'Settling …',
  settled: 'Settled',
  notAtRest: 'Not quite at rest',
  notSettled: 'Not settled',
  toLookAt: (count: number) => `${count} to look at`,
  /** What came of the last edit, said to a screen reader. Lengths are written out. */
  said: (read: {
    isAtRest: boolean;
    belly: string;
    bellyRow: number;
    rim: string;
    height: string;
    findings: number;
  }) =>
    `${read.isAtRest ? '' : 'Not quite at rest. '}Belly ${read.belly} at row ${read.bellyRow}, rim ${read.rim}, height ${read.height}; ${findings(read.findings)}.`,
};

function findings(count: number): string {
  return count === 1 ? '1 finding' : `${count || 'no'} findings`;
}
