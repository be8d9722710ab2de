/** What is said with the basket on the stage. */
export const sceneWords = {
  laidOver: (solid: string, outlined: string) => `${solid}. Laid over it: ${outlined}`,
  lost: 'The graphics card has let go of the picture. It comes back by itself; your plan is safe.',
  lostOfTwo:
    'The graphics card has let go of the picture. It comes back by itself; your plans are safe.',
};
