/** What is written into files of the shape by whom they were made. */
export const shapeFileWords = {
  glbMaker: 'Girthline, with glTF-Transform',
  /** Plain letters and figures of ASCII, at most 80; it may not begin with `solid`. */
  stlHeading: 'Girthline: base and wall of a basket, millimetres, z up',
};
