/** Words of the trade that the app uses, in plain words. Ours; none is taken from a book. */
export const tradeWords = {
  stake: {
    name: 'stake',
    meaning:
      'A stiff strand that starts in the base and stands up in the wall. Weavers go round it.',
  },
  spoke: {
    name: 'spoke',
    meaning:
      'A stake of a round base: it crosses the middle, so each spoke gives two ends in the wall.',
  },
  end: {
    name: 'end',
    meaning:
      'One strand standing in the wall. The weaver goes in front of one end and behind the next.',
  },
  oddEnd: {
    name: 'odd end',
    meaning:
      'One end more or less, so that the count is odd. Then one long weaver that goes over one and ' +
      'under one changes sides at every turn, as it must.',
  },
  gap: {
    name: 'gap',
    meaning: 'The space between two stakes of the base.',
  },
  filler: {
    name: 'filler',
    meaning:
      'A short strand that fills a gap of the base and does not stand up in the wall. At the rim: the ' +
      'strand that fills the top between the two hoops.',
  },
  lift: {
    name: 'lift',
    meaning:
      'How far the middle of the base stands off the table, so that the basket stands on its edge.',
  },
  upsett: {
    name: 'upsett',
    meaning:
      'Bending the stakes up from the base to begin the wall: rolled is a soft bend, creased a sharp ' +
      'fold.',
  },
  corners: {
    name: 'corners',
    meaning:
      'What the stakes at the corners of the base do: square leaves them as they stand, pinned draws ' +
      'them together in the first rows.',
  },
  hold: {
    name: 'hold',
    meaning:
      'How much of the corner’s bend you press into the weaver by hand. It fades out by the row given; ' +
      'above, the wall rounds as it will.',
  },
  weaver: {
    name: 'weaver',
    meaning: 'The thin strand that goes round the wall, in front of some ends and behind others.',
  },
  row: {
    name: 'row',
    meaning: 'One turn of the weaver round the basket. Rows are counted from the base up.',
  },
  band: {
    name: 'band',
    meaning: 'Some rows one above the other with the same weaver, weave and colour.',
  },
  weave: {
    name: 'weave',
    meaning:
      'How the strand goes round. Continuous: one weaver spirals up. Rounds: each row starts and stops. ' +
      'Twined, chased and twill are in the list of words, under Help.',
  },
  twining: {
    name: 'twining',
    meaning: 'Two weavers turned about each other between the stakes.',
  },
  chasing: {
    name: 'chasing',
    meaning: 'Two weavers that follow one another, each a row, for an even count of ends.',
  },
  twill: {
    name: 'twill',
    meaning: 'A weave over two and under two, a step to the side in every row.',
  },
  packing: {
    name: 'packing',
    meaning:
      'Height of a row by the width of its weaver. Rows never lie quite tight: 1.05 is usual, a ' +
      'hand that beats them down has less.',
  },
  crimp: {
    name: 'crimp',
    meaning: 'The extra length a strand takes up by going over and under.',
  },
  set: {
    name: 'set',
    meaning:
      'How much of a bend stays in a strand that was bent wet: 0 springs back, 1 stays as bent.',
  },
  girth: {
    name: 'girth',
    meaning: 'The way all round the basket at one row.',
  },
  tapeGirth: {
    name: 'tape girth',
    meaning: 'The girth as a tape measure reads it, laid round the outside of the weave.',
  },
  pullIn: {
    name: 'pull-in',
    meaning:
      'Weaving a row tighter than the last, so that the wall leans in. Letting out is the other way: ' +
      'the wall flares.',
  },
  belly: {
    name: 'belly',
    meaning: 'The widest row of the wall.',
  },
  rim: {
    name: 'rim',
    meaning:
      'The finished upper edge: two hoops, inside and outside, with a filler between, lashed on.',
  },
  lashing: {
    name: 'lashing',
    meaning: 'The thin strand wound round the hoops, which ties the rim to the wall.',
  },
  handle: {
    name: 'handle',
    meaning:
      'A bow over the basket. One that swings hangs in two ears; a fixed one holds the width.',
  },
  ear: {
    name: 'ear',
    meaning: 'A small loop at the rim in which a swinging handle hangs.',
  },
} satisfies Readonly<Record<string, { readonly name: string; readonly meaning: string }>>;
