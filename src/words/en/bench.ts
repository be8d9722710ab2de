/** What is said at the bench, but for its measuring pad. Lengths come written. */
export const benchWords = {
  toPlan: '‹ Plan',
  row: (row: number) => `Row ${row}`,
  rowColumn: 'Row',
  asPlanned: 'as planned',

  head: {
    basket: 'Basket of this plan',
    oneMore: 'One more basket …',
    notKept:
      'This browser keeps nothing: leave the page open until the basket is done, or save the plan.',
    awake: 'The screen stays awake.',
  },

  /** The row being woven. Its number stands large between `row` and `of`. */
  now: {
    title: 'Row being woven',
    row: 'Row',
    of: (rows: number) => `of ${rows}`,
    byPlan: 'By the plan: weave to a tape girth of',
    byReplan: 'By the replan: weave to a tape girth of',
    next: (row: number, what: string) => `Row ${row}: ${what}`,
    allWoven: (rows: number) => `All ${rows} rows are woven`,
    bindOff: 'Measure the rim, then bind it off.',
    replanWaits: (row: number) => `The replan has row ${row} at {girth}`,
    newReplanWaits: (row: number) => `A new replan has row ${row} at {girth}`,
    figuresOfPlan: 'Until you take it, the figures below are the plan’s.',
    figuresOfReplan: 'Until you take it, the figures below are the last replan’s.',
    /** Names of two large figures, one beside the other; read from afar, so in few letters. */
    names: {
      replan: 'Replan',
      plan: 'Old plan',
      newReplan: 'New replan',
      lastReplan: 'Last replan',
    },
    untilTaken: (row: number) =>
      `Until you take the replan, rows after row ${row} are told by the old plan.`,
    untilNewTaken: (row: number) =>
      `Until you take the new replan, rows after row ${row} are told by the last one.`,
    takeIt: 'Take it',
    nextRows: (unit: string) => `Next rows, ${unit}`,
  },

  buttons: {
    back: 'Back one',
    measured: 'Measured',
    done: 'Row done',
  },

  /** What can be undone, as it is named behind “Undo”. */
  steps: {
    newBasket: 'another basket of this plan',
    otherBasket: 'the other basket of this plan',
    back: 'back a row',
    done: (row: number) => `row ${row} done`,
    rowsInAll: 'rows in all',
    rowsToTake: 'rows to take',
    belly: 'belly as an aim',
    rim: 'rim as an aim',
    limits: 'limits of the rows to come',
    replanTaken: 'replan taken',
    replanLeft: 'back to the old plan',
  },

  replan: {
    title: 'The rows to come',
    begin: 'Measure a row, and the rest is worked out anew from there.',
    rowAsPlanned: (row: number) => `Row ${row} is as planned.`,
    /** Of a row that nobody measured. */
    rowTakenAsPlanned: (row: number) => `Row ${row}, not measured, is taken to be as planned.`,
    rowTakenTighter: (row: number, by: string) =>
      `Row ${row}, not measured, is taken to be ${by} tighter than planned.`,
    rowTakenWider: (row: number, by: string) =>
      `Row ${row}, not measured, is taken to be ${by} wider than planned.`,
    rowTighter: (row: number, by: string) => `Row ${row} is ${by} tighter than planned.`,
    rowWider: (row: number, by: string) => `Row ${row} is ${by} wider than planned.`,
    isTaken: 'You are weaving to a replan.',
    furtherTighter: (row: number, by: string) =>
      `It moves further off before it comes back: row ${row} is ${by} tighter than planned, then it turns.`,
    furtherWider: (row: number, by: string) =>
      `It moves further off before it comes back: row ${row} is ${by} wider than planned, then it turns.`,
    whyFurther:
      'The wall is still on its way out of the plan, and turning it gently takes some rows.',
    take: 'Take the replan',
    leave: 'Back to the old plan',
    nothing: (plan: string) => `Nothing to change for “${plan}” so far.`,
    restOfRows: (from: number) => `Rows ${from} to the rim`,
    columns: { planned: 'Old plan', replanned: 'Replan', apart: 'Apart' },
  },

  /** Aims that are out of reach, and the nearest that is not. */
  missed: {
    rim: (aim: string, nearest: string) =>
      `The rim of ${aim} can no longer be reached; the nearest is ${nearest}.`,
    belly: (row: number, aim: string, nearest: string) =>
      `The belly at row ${row} of ${aim} can no longer be reached; the nearest is ${nearest}.`,
    plan: (row: number) => `The plan can be met again at row ${row}, not before.`,
  },

  aims: {
    backOver: 'Come back to the plan over',
    rows: (rows: number) => `${rows} rows`,
    allRows: (rows: number) => `all ${rows} rows left`,
    belly: (row: number) => `Reach the belly at row ${row}`,
    rim: 'Rim, tape girth',
    planned: (girth: string) => `plan ${girth}`,
    rowsInAll: 'Rows in all',
    high: (height: string) => `${height} high`,
    /** `rows` is how many rows more or fewer, `change` the same with its sign. */
    forHeight: (rows: number, change: string, height: string) =>
      `${change} ${Math.abs(rows) === 1 ? 'row' : 'rows'} for the planned height of ${height}`,
    less: (what: string) => `${what}: less`,
    more: (what: string) => `${what}: more`,
  },

  limits: {
    title: (lean: number, perGap: string) => `Limits: ${lean}° of lean, ${perGap} per gap`,
    lean: 'Most lean of the wall',
    perGap: 'Most change between two stakes, a row',
    usual: 'as usual',
    usually: (usual: string) => `usually ${usual}`,
    ofPlan: 'Where the plan itself asks for more, the plan’s own change is the limit of that row.',
  },

  table: {
    title: 'On the table',
    belly: (row: number) => `Belly, row ${row}`,
    rim: 'Rim',
    height: 'Height',
    toPlan: (change: string) => `${change} against the plan`,
    /** `rows` is how many rows it has moved up, below 0 down. */
    moved: (rows: number) =>
      `${Math.abs(rows)} ${Math.abs(rows) === 1 ? 'row' : 'rows'} ${rows > 0 ? 'higher' : 'lower'} than planned`,
    /** Both of these. */
    both: (change: string, moved: string) => `${change}, ${moved}`,
    outline: 'As it stands and will stand',
    /** How rows stand in the line that were woven and not measured. A wall does not step out in one row. */
    noneMeasured: 'Rows that are done and not measured stand as planned until one is measured.',
    someMeasured:
      'Rows that are done and not measured are an estimate, also where they were woven as planned: a wall does not step out in one row, so they lead evenly from one measured row to the next, the first time from the base. Measure one, and it stands at its girth.',
  },

  /** Length and width as measured, beside those of the settled shape. */
  across: {
    title: (unit: string) => `Length × width, ${unit}`,
    columns: { measured: 'Measured', shape: 'Its shape' },
    asShape: (row: number) => `Row ${row} has the shape that its girth settles to.`,
    /** `apart` is one or two of `longer` … `narrower`. */
    isApart: (row: number, apart: readonly string[]) =>
      `Row ${row} is ${apart.join(' and ')} than its girth settles to: press it round while it is damp, or leave it so.`,
    longer: (by: string) => `${by} longer`,
    shorter: (by: string) => `${by} shorter`,
    wider: (by: string) => `${by} wider`,
    narrower: (by: string) => `${by} narrower`,
    worksSo:
      'The shape is worked out from girths and height; length and width are set beside it and do not move it.',
  },

  ahead: {
    title: 'Ahead',
    nothing: 'Nothing stands in the way.',
    nothingOfReplan: 'Nothing stands in the way of the replan.',
    /** Where the replan is not taken. */
    ofReplan: 'What is said here is of the replan, not of the old plan.',
    ofNewReplan: 'What is said here is of the new replan, not of the last one.',
    waiting: 'Being worked out …',
  },
};
