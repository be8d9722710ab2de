/**
 * What is found about a basket. Lengths come already written, as the view's unit wants them or as
 * `{mm:12.3}`, which the view writes in the plan's unit. Rows and other counts come as numbers; `where` is
 * what `rows`, `base` or `baseAndRows` give.
 */
export const findingWords = {
  rows: (first: number | undefined, last: number | undefined) =>
    first === last ? `Row ${first}` : `Rows ${first} to ${last}`,
  base: 'The base',
  baseAndRows: (last: number) => `The base and the rows up to ${last}`,

  /** A weave that does not go with the count of ends; `weave` as in `weaveWords.inSentence`. */
  count: {
    repeats: (where: string, weave: string, ends: number) =>
      `${where}: ${weave} needs an odd count of ends, and there are ${ends}: every row would ` +
      'repeat the one below. Split a stake or add one, chase two weavers, or weave rows that start ' +
      'and stop.',
    unmet: (where: string, weave: string, ends: number) =>
      `${where}: ${weave} need an even count of ends, and there are ${ends}: over and under would ` +
      'not meet. Leave the odd end out, or weave with one weaver that goes round and round.',
    twillRepeats: (where: string, ends: number) =>
      `${where}: a twill over two and under two repeats the row below on ${ends} ends (none left ` +
      'over from fours). Split a stake or add one: an odd count steps by one.',
    noDiagonal: (where: string, ends: number) =>
      `${where}: a twill over two and under two steps two stakes a row on ${ends} ends (two left ` +
      'over from fours), so no diagonal appears. Split a stake or add one: an odd count steps by one.',
  },
  diagonal: {
    against: (where: string, ends: number) =>
      `${where}: on ${ends} ends (one left over from fours) the twill steps one stake a row, and ` +
      'its diagonal climbs against the way the weaver goes.',
    along: (where: string, ends: number) =>
      `${where}: on ${ends} ends (three left over from fours) the twill steps one stake a row, and ` +
      'its diagonal climbs along with the way the weaver goes.',
  },

  ruffles: (where: string, row: number, by: string, takes: string) =>
    `${where} will ruffle: the plan lets row ${row} out by ${by}, and a wall that ` +
    `lies quite flat takes ${takes}. Let out over more rows.`,
  folds: (where: string, row: number, by: string, takes: string) =>
    `${where} will fold in: the plan pulls row ${row} in by ${by}, and a wall ` +
    `that lies quite flat takes ${takes}. Pull in over more rows.`,
  girthNotReached: (at: {
    readonly where: string;
    readonly row: number;
    readonly isShort: boolean;
    readonly by: string;
    readonly girth: string;
    readonly share: string;
    readonly allowed: string;
  }) =>
    `${at.where} cannot take the planned girth: row ${at.row} comes out ${at.by} ` +
    `${at.isShort ? 'short of' : 'over'} ${at.girth}, which is ${at.share} (${at.allowed} is let ` +
    'pass). The shape shown is the nearest that can be woven: let the girth change more gently here.',
  stakeStretched: (where: string, share: string, isLonger: boolean, allowed: string) =>
    `${where}: a stake would have to be ${share} ` +
    `${isLonger ? 'longer' : 'shorter'} than it is (${allowed} is let pass). ` +
    'The shape shown is a compromise: change the girth more gently, or lift the base less.',
  handleNotHeld: (where: string, row: number, by: string, isTooFar: boolean, allowed: string) =>
    `${where}: the wall cannot keep to the handle's legs; at row ${row} they stand ` +
    `${by} ${isTooFar ? 'too far' : 'not far enough'} apart (${allowed} is let pass). Plan the handle ` +
    `${isTooFar ? 'wider' : 'narrower'}, or give these rows more girth.`,
  flatRowsOff: (by: string, isLonger: boolean, share: string, allowed: string) =>
    `The base: a row woven flat would have to be ${by} ` +
    `${isLonger ? 'longer' : 'shorter'} than it is, ${share} of it ` +
    `(${allowed} is let pass). Lift the base less, or turn up more gently.`,
  rocks: (hang: string, isRound: boolean, liftNow: string | undefined) =>
    `It stands on the inner part of its base and rocks: that hangs ${hang} below ${isRound ? 'its edge' : 'the corners'}. ` +
    `Push the middle of the base in further (${liftNow ? `more than the ${liftNow} it has now` : 'it has no lift now'}).`,
  stakesOverlap: (where: string, by: string, shaved: string) =>
    `${where}: neighbouring stakes lie over one another by ${by} (up to ` +
    `${shaved} can be shaved off). Pull in less, or use narrower or fewer stakes.`,
  stakesFarApart: (where: string, apart: string, allowed: string) =>
    `${where}: stakes stand up to ${apart} apart, where ${allowed} is let pass, ` +
    'and carry the weaver badly. Add stakes, or open out less.',
  tightBend: (at: {
    readonly ends: number;
    readonly radius: string;
    readonly cracks: boolean;
    readonly times: number;
    readonly limit: string;
  }) =>
    `${at.ends === 1 ? 'A stake is' : `The stakes of ${at.ends} ends are`} bent to a radius of down to ` +
    `${at.radius}, ${at.cracks ? 'likely to crack even when soaked' : 'near the limit when soaked'}: ` +
    `${at.times} times the thickness is ${at.limit}. Soak well and pinch the bend ` +
    'with pliers, crease it, or use thinner stakes.',
  edgeStrained: (where: string, row: number, share: string, limit: string, isMuch: boolean) =>
    `${where}: one edge of the flat weaver is ${share} longer than its middle ` +
    `(row ${row}); beyond ${limit} it ${isMuch ? 'cups or its edge stands off' : 'may cup'}. ` +
    'A narrower weaver lies flatter, and so does a gentler change of girth.',
  rowPressed: (where: string, row: number, times: string) =>
    `${where}: the stakes press the rows together, about row ${row} with ` +
    `${times} times what rings of this weaver bear before they go oval. Shape the ` +
    'stakes beforehand (a larger set), use a stiffer weaver, or curve the wall less.',
  /** `part` as in `partWords`. */
  strandTooShort: (part: string, length: string, usable: string) =>
    `A ${part} is ${length} long, more than the ${usable} that a strand ` +
    'is counted on for. Look out longer strands, or plan a lower wall.',
  tipsEasily: (degrees: string, enough: number) =>
    `It tips over when tilted by ${degrees}°, empty; ${enough}° is the least to ` +
    'aim for. Make the base larger, the wall lower, or let the corners stand lower.',
  notSettled: (steps: number, lastMove: string | undefined) =>
    `The shape had not come to rest after ${steps} steps ` +
    `(${lastMove ? `the last one moved it by ${lastMove}` : 'it was still moving a little'}): ` +
    'take its figures as rough. A gentler girth line settles.',
};
