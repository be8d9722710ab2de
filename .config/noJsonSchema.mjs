/**
 * Every schema of zod's brings what writes it as JSON Schema. The page never does (`npm run docs:schema` does,
 * in Node), so in the built app these two modules are left empty: 5 kB less to load.
 */
const modules = /zod[\\/]v4[\\/]core[\\/](to-json-schema|json-schema-processors)\.js$/;
const exported = /^export (?:const|function) (\w+)|^export \{ \w+ as (\w+) \}/gm;

/** @returns {import('vite').Plugin} */
export function noJsonSchema() {
  let found = 0;
  return {
    name: 'girthline:no-json-schema',
    apply: 'build',
    transform(code, id) {
      if (!modules.test(id)) return null;
      found += 1;
      const names = [...code.matchAll(exported)].map(([, own, other]) => own ?? other);
      return { code: names.map(empty).join('\n'), map: null };
    },
    buildEnd(error) {
      if (!error && found === 0)
        this.error('zod has its JSON Schema elsewhere: see .config/noJsonSchema.mjs');
    },
  };
}

/** @param {string | undefined} name */
function empty(name) {
  const it = `${name}Left`;
  return `function ${it}() { throw new Error('${name} is not in the page'); }\nexport { ${it} as ${name} };`;
}
