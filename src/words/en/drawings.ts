/** Line drawings of the basket from one side. */
export const drawingWords = {
  /** `title` is the view's name. */
  outline: (title: string, width: string, height: string) =>
    `${title}: ${width} wide, ${height} high without its rim`,
  /** Beside the upright dimension line. */
  wall: (height: string) => `wall ${height}`,
};
