import type { Handle } from '../../plan/schema.ts';

/**
 * The work in order. Each step has a title and sentences, of which some stand only where a plan asks
 * for them. Lengths are written out, their unit included.
 */
export const sheetStepWords = {
  heading: 'Steps',
  soak: {
    title: 'Soak',
    pieces:
      'Cut and mark the pieces of the cut list. Soak flat stakes about 10 minutes in lukewarm water, thin weavers 10, thicker round reed 15 to 20, half round and rim hoops 30 or more; too long makes them hairy, too short breaks them.',
    /** Where a strand is coloured. */
    dyed: 'Dye and rinse coloured strand before you weave with it: see Dyes under Take care.',
    damp: 'Keep the smooth face out and everything damp while you work.',
  },
  layOut: {
    title: 'Lay out and true the base',
    board: (stakes: number) => `Stand ${stakes} stakes in the edge of the board, evenly spaced.`,
    wheel: (spokes: number, diameter: string) =>
      `Cross ${spokes} spokes at the hub, evenly spread, and weave flat until the base is ${diameter} across.`,
    laidIn: (ends: number, diameter: string) =>
      `Lay in ${ends} more ends when it is ${diameter} across.`,
    oval: (lengthwise: number, crosswise: number, length: string, width: string) =>
      `Lay ${lengthwise} and ${crosswise} stakes over and under, lay in the corner stakes, ` +
      `and weave flat to a base of ${length} × ${width}.`,
    mat: (strands: number, length: string, width: string) =>
      `Lay the ${strands} strands over and under to a base of ${length} × ${width}. ` +
      'It is true when opposite sides are equal and both diagonals are.',
    template: 'Check it on the base template (with the full-size gauges).',
    fillers: 'Fillers lie between the stakes and stay in the base.',
    /** `place` as in `oddEndPlaceWords.at`. */
    split: (place: string) => `Split one stake ${place}, down to the base, for the odd end.`,
    added: (place: string) => `Add one end ${place}.`,
  },
  corners: {
    title: 'Corners',
    pinned: (rows: number, off: number) =>
      `Pin the two stakes of each corner together for the first ${rows} rows; take the pins off at row ${off}.`,
    fanned: (rows: number) =>
      `Let the first ${rows} rows lie flat round the base, with a little more length at each corner.`,
    square: 'Crease the corners and let them go by themselves.',
  },
  weave: {
    title: 'Weave the rows',
    rows: (first: number, last: number, strand: string) => `Rows ${first} to ${last}: ${strand}.`,
    rowsThinned: (first: number, last: number, strand: string, length: string) =>
      `Rows ${first} to ${last}: ${strand}, its start thinned over ${length}.`,
    measure:
      'Pack each row down, measure it with the tape, and tick it off on the chart. If it is off, write what it came to and put it right over the next rows, a little in each.',
  },
  splices: {
    title: 'Splices',
    text: (stakes: number) =>
      `A new weaver goes back ${stakes} stakes over the old one, both ends hidden behind a stake. Use every strand to its end, and never splice on a corner.`,
  },
  upsett: {
    title: 'Upsett',
    creased: 'Fold every stake up sharply over a ruler along the edge of the base.',
    rolled: 'Let the stakes bend up smoothly over the first rows.',
    lift: (height: string) =>
      `Push the middle of the base in by ${height} while it is wet, so that it stands on its corners.`,
  },
  shape: {
    title: 'Shape by the girth line',
    belly: (widest: string, row: number, rim: string) =>
      `Follow the tape girths: the widest is ${widest} at row ${row}, the rim ${rim}.`,
    plain: (first: string, rim: string) =>
      `Follow the tape girths from ${first} at row 1 to ${rim} at the rim.`,
    spread:
      'A tight weaver brings the stakes together, a slack one lets them out; spread every change over all gaps alike.',
  },
  end: {
    title: 'End the weaving',
    thin: (length: string) =>
      `Thin the last ${length} so that the top comes out level, and end over the place where the weaver began.`,
    dry: (row: number, height: string) =>
      `After row ${row} the wall stands ${height} over the table. Let it dry, pack it down again, and add a row if it has shrunk.`,
  },
  tuck: {
    title: 'Tuck and cut',
    text: (tuck: string) =>
      `Damp the stakes. Those that lie outside the last row are pointed, folded in and tucked behind two or three rows (${tuck} is left for it); those that lie inside are cut flush with it.`,
  },
  ears: {
    title: 'Ears',
    text: 'Slide the legs of each ear down behind the rows along a stake, about 2 in (5 cm), one in the middle of each side, before the rim goes on.',
  },
  handle: {
    title: 'Handle',
    fixed: (spread: string) =>
      `Bend the soaked bow to hold ${spread} between its legs, which go down the wall to the base, before the rim goes on.`,
    swing: 'Bend the soaked bow, hang it in the ears and let it dry in shape.',
    load: 'It has no load rating: see Handle under Take care before it carries anything.',
    wrap: (turns: number) => `Wrap all of its bow edge to edge, in ${turns} turns.`,
  },
  rim: {
    title: 'Rim',
    hoops: (thinned: string) =>
      `Lay one hoop outside and one inside over the last row, their laps on opposite sides and away from the handle; thin each end over ${thinned}.`,
    filler: 'Lay the filler on top between them.',
    clamp: 'Clamp all round.',
  },
  lash: {
    title: 'Lash',
    once: (gaps: number) => `Once round in each of the ${gaps} gaps, pulled tight.`,
    /** What the lasher meets on its way round. */
    over: {
      none: '',
      swing: 'Where the lasher meets an ear, cross it.',
      fixed: 'Where the lasher meets a leg of the handle, cross it.',
    } satisfies Record<Handle['kind'], string>,
  },
};
