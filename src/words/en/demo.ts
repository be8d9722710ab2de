/** Names and notes of the baskets to start from. */
export const demoWords = {
  orchardTrug: {
    name: 'Orchard trug',
    notes:
      'Second evening at the Tidemill orchard. Holds a good picking of eating apples. Push the ' +
      'middle of the base in well while the stakes are wet, so that it stands on its four corners. ' +
      'Pins off after row 8; belly about row 20; then pull in evenly to the rim.',
  },
  labelPot: {
    name: 'Label pot',
    notes:
      'For tree labels and pencils in the grafting shed. A square base creased over a ruler, every ' +
      'row the same girth: the corners go by themselves on the way up.',
  },
  dryingTray: {
    name: 'Drying tray',
    notes:
      'For apple rings on the drying loft. Let the same length into every row, the most of it ' +
      'between the corner stakes. An even count of ends, so two weavers chase one another.',
  },
  russetJar: {
    name: 'Russet jar',
    notes:
      'For russets kept till spring. Two twined rows hold the square, then it swells to row 22 and ' +
      'the shoulder is drawn over in the last rows: keep the weaver wet and pull a little each row.',
  },
  plumBowl: {
    name: 'Plum bowl',
    notes:
      'For the first plums on the kitchen table. Eight spokes laid over each other and half a spoke ' +
      'beside them, so that one weaver can go round and round. Thin spokes: crease them over the edge ' +
      'of the base and let them lean out.',
  },
  loafBasket: {
    name: 'Loaf basket',
    notes:
      'For the loaves of the orchard supper. Weave a border flat round the mat and lay a stake in at ' +
      'each of its corners; set the handle in before the rim goes on, so that it holds the sides. An ' +
      'even count of ends: two weavers chase one another.',
  },
};
