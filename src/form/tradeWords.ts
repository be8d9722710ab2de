/** Words of the trade that the app uses, in plain words. Ours; none is taken from a book. */
export const tradeWords = {
  stake: 'A stiff strand that starts in the base and stands up in the wall. Weavers go round it.',
  spoke:
    'A stake of a round base: it crosses the middle, so each spoke gives two ends in the wall.',
  end: 'One strand standing in the wall. The weaver goes in front of one end and behind the next.',
  'odd end':
    'One end more or less, so that the count is odd. Then one long weaver that goes over one and ' +
    'under one changes sides at every turn, as it must.',
  gap: 'The space between two stakes of the base.',
  filler:
    'A short strand that fills a gap of the base and does not stand up in the wall. At the rim: the ' +
    'strand that fills the top between the two hoops.',
  lift: 'How far the middle of the base stands off the table, so that the basket stands on its edge.',
  upsett:
    'Bending the stakes up from the base to begin the wall: rolled is a soft bend, creased a sharp ' +
    'fold.',
  corners:
    'What the stakes at the corners of the base do: square leaves them as they stand, pinned draws ' +
    'them together in the first rows.',
  hold:
    'How much of the corner’s bend you press into the weaver by hand. It fades out by the row given; ' +
    'above, the wall rounds as it will.',
  weaver: 'The thin strand that goes round the wall, in front of some ends and behind others.',
  row: 'One turn of the weaver round the basket. Rows are counted from the base up.',
  band: 'Some rows one above the other with the same weaver, weave and colour.',
  weave:
    'How the strand goes round. Continuous: one weaver spirals up. Rounds: each row starts and stops. ' +
    'Twined, chased and twill are in the list of words, under Help.',
  twining: 'Two weavers turned about each other between the stakes.',
  chasing: 'Two weavers that follow one another, each a row, for an even count of ends.',
  twill: 'A weave over two and under two, a step to the side in every row.',
  packing:
    'Height of a row by the width of its weaver. Rows never lie quite tight: 1.05 is usual, a ' +
    'hand that beats them down has less.',
  crimp: 'The extra length a strand takes up by going over and under.',
  set: 'How much of a bend stays in a strand that was bent wet: 0 springs back, 1 stays as bent.',
  girth: 'The way all round the basket at one row.',
  'tape girth': 'The girth as a tape measure reads it, laid round the outside of the weave.',
  'pull-in':
    'Weaving a row tighter than the last, so that the wall leans in. Letting out is the other way: ' +
    'the wall flares.',
  belly: 'The widest row of the wall.',
  rim: 'The finished upper edge: two hoops, inside and outside, with a filler between, lashed on.',
  lashing: 'The thin strand wound round the hoops, which ties the rim to the wall.',
  handle: 'A bow over the basket. One that swings hangs in two ears; a fixed one holds the width.',
  ear: 'A small loop at the rim in which a swinging handle hangs.',
} as const satisfies Readonly<Record<string, string>>;

export type TradeWord = keyof typeof tradeWords;
