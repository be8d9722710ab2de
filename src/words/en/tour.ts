/** The tour: what it shows at each place, and its buttons. */
export const tourWords = {
  step: (step: number, steps: number) => `${step} of ${steps}`,
  back: 'Back',
  next: 'Next',
  done: 'Done',
  end: 'End the tour',
  basket: {
    title: 'This is your basket',
    text: 'Drag it to turn it. Whatever you change in the plan is seen here at once.',
  },
  girthLine: {
    title: 'Pull in, and watch the belly',
    text:
      'The line is half the outline of the basket: rows go up, girth goes out to the right. Drag its ' +
      'top point to the left, or go to it by Tab and press the left arrow: the rim pulls in, and the ' +
      'belly under it changes.',
  },
  compare: {
    title: 'Two flares next to each other',
    text:
      'Compare lays a second plan beside this one. Change its line, and read the difference row by ' +
      'row.',
  },
  rowChart: {
    title: 'Take the row chart with you',
    text:
      'It has the tape girth of every row. Save it as a table, print it as a sheet, or weave from ' +
      'the screen: At the bench has it in figures that are read from afar.',
  },
  help: {
    title: 'Words, keys, and this tour',
    text: 'A ? beside a word of the trade says what it means. All of them are here, with the keys.',
  },
};
