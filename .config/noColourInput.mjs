/**
 * In the place of react-colorful and colord, which leva brings for its colour input. Our panel has a colour
 * field of its own, and the app is 7 kB smaller without.
 */

/** No value is a colour to leva. */
export function colord() {
  return { isValid: () => false };
}

/** The names of colours are not needed either. */
export function extend() {}

/** @returns {never} */
export function getFormat() {
  return refuse();
}

/** @returns {never} */
export function RgbaColorPicker() {
  return refuse();
}

/** @returns {never} */
export function RgbColorPicker() {
  return refuse();
}

// biome-ignore lint/style/noDefaultExport: colord's names come as one
export default undefined;

/** @returns {never} */
function refuse() {
  throw new Error("leva's colour input is not in this app");
}
