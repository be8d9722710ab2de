/**
 * The language that the app is built in: a folder of `src/words`, named by GIRTHLINE_LANGUAGE and chosen by
 * the condition of that name in package.json (docs/translating.md).
 */
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { defaultClientConditions, runnerImport } from 'vite';

const project = fileURLToPath(new URL('..', import.meta.url));
const chosen = process.env.GIRTHLINE_LANGUAGE || 'en';

if (!existsSync(`${project}src/words/${chosen}/language.ts`)) {
  throw new Error(`GIRTHLINE_LANGUAGE is "${chosen}", and src/words has no folder of that name`);
}

/** Conditions by which Vite looks up `#words/…` in package.json. */
export const conditions = [chosen, ...defaultClientConditions];

/** @type {{ language: string }} */
export const { language } = await words('language');

if (language.split('-')[0] !== chosen.split('-')[0]) {
  throw new Error(
    `src/words/${chosen} was asked for, and package.json leads to words of "${language}": see docs/translating.md`,
  );
}

/** @type {{ pageWords: typeof import('#words/page.ts')['pageWords'] }} */
export const { pageWords } = await words('page');

/** @param {string} file */
async function words(file) {
  const { module } = await runnerImport(`#words/${file}.ts`, {
    configFile: false,
    root: project,
    environments: { inline: { resolve: { conditions: [chosen] } } },
  });
  return module;
}

/**
 * Writes the language and the words into `src/index.html`.
 *
 * @returns {import('vite').Plugin}
 */
export function wordsOfPage() {
  return {
    name: 'girthline:words-of-page',
    transformIndexHtml: {
      order: 'pre',
      handler: (html) => filledIn(html, { ...pageWords, language }),
    },
  };
}

/**
 * The page with a text at each of its places, as `{title}`. Throws where there is none for a place.
 *
 * @param {string} html
 * @param {Readonly<Record<string, string>>} texts
 */
export function filledIn(html, texts) {
  return html.replace(/\{(\w+)\}/g, (place, name) => {
    const text = texts[name];
    if (text === undefined) throw new Error(`src/index.html: no words for ${place}`);
    return escaped(text);
  });
}

/** @param {string} text */
function escaped(text) {
  return text
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;');
}
