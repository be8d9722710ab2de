/** What can hurt, in plain words. (Facts: trade tables, section 5.) */
export const sheetCareWords = {
  heading: 'Take care',
  cautions: [
    'Local codes and licensed practice come first; where they say otherwise, do as they say.',
    'Knives, shears and awls: cut away from the hand and the body, lay a rim on a board to thin its ends, keep the free hand behind the edge, never push an awl towards the palm, and sheathe what is not in use.',
    'Sanding: wood and reed dust irritates skin and lungs, and wood dust is known to cause cancer. Draw the dust off first, then wear a dust mask.',
    'Oily rags heat up by themselves and can catch fire: lay them flat, singly, outdoors to dry. Do not leave them in a heap.',
    'Handle: no load rating is given. Try it little by little; never use it to lift people or animals, or over anyone’s head.',
    'Dyes: rubber gloves, pots that are never used for food, a mask when measuring powder, and air when the bath is hot. Only finishes and dyes that are safe with food on a basket for food.',
    'Wet strands whip: mind your eyes and your neighbour’s. Reed edges cut; rest your hands between rows.',
    'Dry the basket through before it is stored, out of plastic, or it will mould. Singe hairs only damp, away from rags and finish.',
  ],
};
