/**
 * In the place of react-dropzone, which leva brings for its image input. Our panel has no images, and
 * the app is 6 kB smaller without.
 *
 * @returns {never}
 */
export function useDropzone() {
  throw new Error('the panel has no image input');
}
