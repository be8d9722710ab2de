/**
 * The rooms of `src` and what each may import besides itself. `imports.mjs` holds the code to it.
 *
 * @typedef {object} Room
 * @property {readonly string[]} rooms rooms it may import from
 * @property {readonly string[]} [typesOf] rooms it may import types from, and nothing that runs
 * @property {readonly string[]} packages npm packages it may import; `node:` stands for Node's own
 */

/** The name used for the files that lie directly in `src`: the page's entry and its frame. */
export const entrance = '(entrance)';

/** @type {Readonly<Record<string, Room>>} */
export const rooms = {
  // All text that a person reads. Every room may use it, and by the name `#words/…` alone.
  words: { rooms: [], typesOf: ['plan', 'model'], packages: [] },
  plan: { rooms: [], packages: ['zod'] },
  model: { rooms: ['plan'], packages: ['quadprog'] },
  mesh: { rooms: ['plan', 'model'], packages: [] },
  export: {
    rooms: ['plan', 'model', 'mesh'],
    packages: ['pdf-lib', '@pdf-lib/fontkit', '@gltf-transform/core', 'fflate'],
  },
  work: { rooms: ['plan', 'model', 'mesh'], packages: [] },
  keep: {
    rooms: ['plan', 'mesh', 'work'],
    typesOf: ['model'],
    packages: ['zustand', 'idb', 'workbox-window'],
  },
  scene: {
    rooms: ['mesh'],
    typesOf: ['model'],
    packages: ['react', 'three', '@react-three/fiber', '@react-three/drei'],
  },
  // The inputs that panel and charts have in common: a length, a count, and the frame of a field.
  form: { rooms: ['plan'], packages: ['react'] },
  panel: { rooms: ['plan', 'form'], packages: ['react', 'leva'] },
  charts: { rooms: ['plan', 'form'], typesOf: ['model'], packages: ['react'] },
  views: {
    rooms: ['plan', 'model', 'mesh', 'export', 'work', 'keep', 'scene', 'form', 'panel', 'charts'],
    // the sheet's fonts are fetched by their address when something is printed
    packages: ['react', 'react-dom', 'dejavu-fonts-ttf'],
  },
  command: { rooms: ['plan', 'model', 'mesh', 'export'], packages: ['node:'] },
  [entrance]: {
    rooms: ['plan', 'work', 'keep', 'scene', 'panel', 'charts', 'views'],
    packages: ['react', 'react-dom'],
  },
};

/**
 * The model's inner rooms in the order the numbers pass through: each may import earlier ones, and
 * only types from later ones.
 */
export const modelOrder = [
  'base',
  'strand',
  'girth',
  'net',
  'settle',
  'read',
  'buildup',
  'finding',
  'quantity',
  'replan',
  'compare',
];

/** Names that say nothing of what is inside, for a folder or a file. */
export const drawerNames = ['utils', 'helpers', 'common', 'types', 'lib'];

/** Above this many lines a file is named in the report; it is a question, not a failure. */
export const longFile = 300;
