/**
 * The reader of GLB files that gltf-transform has for Node is in one file with the writer that we use, and
 * asks for Node's own modules. In the built app nothing calls it: there it gets an empty module, and the
 * build needs no word on modules that a browser does not have.
 */
const nothing = '\0girthline:no-node';

/** @returns {import('vite').Plugin} */
export function noNode() {
  return {
    name: 'girthline:no-node',
    apply: 'build',
    enforce: 'pre',
    resolveId(source, importer) {
      const isNodes = /^node:(fs|path)$/.test(source);
      return isNodes && /@gltf-transform[\\/]core/.test(importer ?? '') ? nothing : null;
    },
    load: (id) => (id === nothing ? 'export default null;' : null),
  };
}
