/**
 * Why a document is not read: where, what was found there, and what is allowed. Names of keys and
 * what stands in quotes come as they are in the document.
 */
export const refusalWords = {
  problem: (file: string, where: string, found: string, allowed: string) =>
    `${file}: ${where}: found ${found}, allowed is ${allowed}`,
  wholeDocument: 'the whole document',

  /** What stands at a key. */
  found: {
    nothing: 'nothing',
    list: (count: number) => `a list of ${count}`,
    object: 'an object',
    function: 'a function',
    unknownKey: 'an unknown key',
    key: (key: string) => `the key ${key}`,
    neither: 'neither of the two',
    both: 'both of them',
  },

  /** What may stand at a key. */
  allowed: {
    keys: (keys: string) => `an object with the keys ${keys}`,
    kinds: (kinds: string) => `an object of kind ${kinds}`,
    length: (least: string, most: string) => `a length from ${least} to ${most} mm`,
    count: (least: string, most: string) => `a whole number from ${least} to ${most}`,
    ratio: (least: string, most: string) => `a number from ${least} to ${most}`,
    text: (least: string, most: string) => `a text of ${least} to ${most} characters`,
    trueOrFalse: 'true or false',
    bands: (least: string, most: string) => `a list of ${least} to ${most} bands`,
    points: (least: string, most: string) => `a list of ${least} to ${most} points`,
    colour: 'a colour name of 1 to 30 letters, or #rrggbb',
    squareRows: '0, or left out: a square corner has no rows of its own',
    oneGap: 'exactly one of "gap" and "gaps" (a gap of 0 is written as 0)',
    rowKey: 'a row number as its key, such as "17"',
    girthByRow: 'an object of girths by row: { "17": 592 }',
    sizesByRow: 'an object of sizes by row: { "9": { "length": 240, "width": 210 } }',
    someSize: 'a length, a width, or both',
    hub: (across: string) => `less than the ${across} mm across the base`,
    addedAt: (hub: string, across: string) =>
      `from the hub's ${hub} mm to less than the ${across} mm across the base`,
  },

  /** Rules that no single key can tell. */
  whole: {
    rows: (rows: number) => `${rows} rows in all`,
    mostRows: (most: number) => `at most ${most} rows in all`,
    ends: (ends: number) => `${ends} ends`,
    mostEnds: (most: number) => `at most ${most} ends round the wall`,
    girth: (girth: string) => `a base girth of ${girth} mm`,
    girthRange: (least: string, most: string) => `a base girth of ${least} to ${most} mm`,
    mostLift: (most: string) => `at most half of the shorter side of the base, ${most} mm`,
    row: (row: string) => `row ${row}`,
    rowsThereAre: (last: number) => `a row from 1 to ${last}, the last row`,
    secondPoint: (row: number) => `a second point on row ${row}`,
    onePoint: 'one point on a row',
  },

  /** A text that is no design document at all. */
  text: {
    empty: 'an empty file',
    document: 'a design document',
    characters: (count: number) => `${count} characters`,
    mostCharacters: (most: number) => `at most ${most} characters`,
    object: 'an object: a design document',
    newest: (version: number) => `${version}, the newest version that this Girthline understands`,
    version: (version: number) => `version ${version}`,
    versions: (versions: string) => `a version of ${versions}`,
    begins: (start: string) => `text that begins ${start}`,
    saved: 'a plan saved by Girthline, which begins with {',
  },

  /** Where a text stops being JSON. */
  json: {
    foundAt: (found: string, line: number, column: number) =>
      `${found} at line ${line}, column ${column}`,
    endOfFile: 'the end of the file',
    secondKey: 'this key a second time',
    everyKeyOnce: 'every key once',
    documentKey: 'a key of the design document',
    endlessNesting: 'nesting without end',
    mostNesting: (levels: number) => `at most ${levels} levels of nesting`,
    wanted: {
      value: 'a number, words in double quotes, or what stands in [ ] or { }',
      firstValue:
        'a number, words in double quotes, what stands in [ ] or { }, or the end of the list',
      firstKey: 'a key in double quotes or }',
      key: 'a key in double quotes',
      colon: 'a colon',
      next: 'a comma or a closing bracket',
      end: 'nothing after the last bracket',
    },
  },
};
