/** What is said with the basket on the stage; lengths come written, in cm. */
export const sceneWords = {
  settling: 'The basket is being settled',
  basket: (length: string, width: string, height: string, ends: number, rows: number) =>
    `Woven basket, ${length} by ${width} cm at the rim and a wall ${height} cm high, ${ends} ends and ${rows} rows`,
  laidOver: (solid: string, outlined: string) => `${solid}. Laid over it: ${outlined}`,
  lost: 'The graphics card has let go of the picture. It comes back by itself; your plan is safe.',
  lostOfTwo:
    'The graphics card has let go of the picture. It comes back by itself; your plans are safe.',
};
