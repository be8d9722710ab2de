/**
 * Holds all text that a person reads in one place, `src/words`, ready for translation. Prints one
 * line per text found elsewhere in `src`, and fails if any.
 *
 * What counts as text: anything written between the tags of JSX, an attribute that is read out or
 * shown, a string in which a word stands beside a space, and a string that begins like a sentence.
 * A single word in lower case may be a key of the document or text; that is left to the reader, but for the
 * key of a unit (`unit`), which is not to be shown or put into words: its letters are words too.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { parseSync } from 'vite';

/**
 * Strings that look like text and are for the machine, by file. One that is no longer there is told too.
 *
 * @type {ReadonlyMap<string, RegExp>}
 */
const forTheMachine = new Map([
  // style sheets, fonts and queries of CSS
  ['src/export/outlinesSvg.ts', /^\.body \{/],
  ['src/scene/Eye.tsx', /^\(prefers-/],
  ['src/views/compare/posterPicture.ts', /^(bold ?)?(\d*px)?$/],
  ['src/views/guide/usePlaceOf.ts', /^\(prefers-/],
  ['src/views/print/sheetFonts.ts', /^Girthline sheet$/],
  ['src/views/useKeys.ts', /^input:not/],
  ['src/views/useTheme.ts', /^\(prefers-/],
  // operators of the PDF page (ISO 32000-1, annex A), and the names that its fonts go by in the code
  ['src/export/pdf/page/content.ts', /^(rg|RG|BT|Tf|Tm|Tj\nET)$/],
  ['src/export/pdf/page/writePdf.ts', /^(Regular|Bold)$/],
  // titles of sources, which stay as they were published
  ['src/plan/sizeSources.ts', /^/],
  // what is dragged, as browsers name it
  ['src/views/FileDrop.tsx', /^Files$/],
]);

/** Values of the design document, and of an enum, that have spaces in them. */
const codeValues = /^(middle of a (long|short) side|no diagonal)$/;

/** Names of keys as browsers give them, which begin with a capital like a sentence. */
const keyNames = /^(Enter|Escape|Tab|Home|End|Delete|Backspace|Insert|Page(Up|Down)|Arrow\w+)$/;

/** Attributes that name things to the machine and may hold several words. */
const machineAttributes =
  /^(className|d|viewBox|transform|points|style|strokeDasharray|preserveAspectRatio|accept|allow|rel|key|id|href|data-.*|aria-(labelledby|describedby|controls|owns))$/;

/** Attributes that are text even where they hold a single word. */
const shownAttributes =
  /^(title|alt|placeholder|label|aria-(label|description|roledescription|valuetext))$/;

/**
 * Texts of one file that belong in `src/words`.
 *
 * @param {string} file path from the project, with `/`
 * @param {string} source
 * @returns {string[]} one line per text
 */
export function strayTexts(file, source) {
  const { program, errors } = parseSync(file, source);
  if (errors.length) throw new Error(`${file} does not parse: ${errors[0]?.message}`);
  /** @type {string[]} */
  const found = [];
  const machine = forTheMachine.get(file);
  let isMet = false;
  /** Names in this file of words and of parts of them. @type {Set<string>} */
  const wordNames = new Set();
  /** @param {any} node @param {string} text */
  const tell = (node, text) => {
    if (machine?.test(text.trim())) {
      isMet = true;
      return;
    }
    const line = source.slice(0, node.start).split('\n').length;
    found.push(`${file}:${line}: text outside src/words: ${text.trim().slice(0, 80)}`);
  };
  walk(program, false);
  if (machine && !isMet) found.push(`${file}: no longer holds ${machine} (.config/text.mjs)`);
  return found;

  /** @param {any} node @param {boolean} isShown in an attribute that is text whatever it holds */
  function walk(node, isShown) {
    if (node === null || typeof node !== 'object') return;
    if (Array.isArray(node)) {
      for (const one of node) walk(one, isShown);
      return;
    }
    if (typeof node.type !== 'string') return;
    noteWords(node, wordNames);
    if (isMachine(node)) return;
    if (isUnitShown(node, wordNames)) tell(node, 'the key of a unit');
    const shown = isShown || (node.type === 'JSXAttribute' && shownAttributes.test(nameOf(node)));
    const text = textOf(node);
    if (text !== undefined && isText(text, node.type === 'JSXText' || shown)) tell(node, text);
    for (const value of Object.values(node)) walk(value, shown);
  }
}

/**
 * Notes the names that an import of words, or a constant taken from such a name, brings.
 *
 * @param {any} node
 * @param {Set<string>} names
 */
function noteWords(node, names) {
  if (node.type === 'ImportDeclaration' && node.source.value.startsWith('#words/')) {
    for (const { local } of node.specifiers) names.add(local.name);
  }
  if (node.type !== 'VariableDeclarator' || !names.has(rootOf(node.init))) return;
  const { id } = node;
  const parts =
    id.type === 'ObjectPattern' ? id.properties.map((/** @type {any} */ one) => one.value) : [id];
  for (const { name } of parts) if (name) names.add(name);
}

/**
 * Whether `unit` stands in JSX or in a template, or is given to a function of the words.
 *
 * @param {any} node
 * @param {ReadonlySet<string>} names
 */
function isUnitShown(node, names) {
  const isUnit = (/** @type {any} */ one) =>
    (one?.type === 'JSXExpressionContainer' ? one.expression : one)?.name === 'unit';
  if (node.type === 'JSXElement' || node.type === 'JSXFragment') return node.children.some(isUnit);
  if (node.type === 'TemplateLiteral') return node.expressions.some(isUnit);
  return (
    node.type === 'CallExpression' && names.has(rootOf(node.callee)) && node.arguments.some(isUnit)
  );
}

/** The name that a chain of members begins with, as `words` of `words.table.title`. @param {any} node */
function rootOf(node) {
  let at = node;
  while (at?.type === 'MemberExpression') at = at.object;
  return at?.type === 'Identifier' ? at.name : '';
}

/** @param {any} node */
function nameOf(node) {
  const { name } = node;
  return name.type === 'JSXNamespacedName' ? '' : name.name;
}

/** @param {any} node */
function textOf(node) {
  if (node.type === 'JSXText') return node.value;
  if (node.type === 'Literal' && typeof node.value === 'string') return node.value;
  if (node.type === 'TemplateElement') return node.value.cooked ?? '';
  return undefined;
}

/**
 * @param {string} text
 * @param {boolean} isShown
 */
function isText(text, isShown) {
  if (keyNames.test(text) || codeValues.test(text)) return false;
  if (isShown) return /\p{L}{2}/u.test(text);
  return /(^|\s)\p{L}{2,}[,.:;!?”]*\s|\s[“(]?\p{L}{2,}([\s,.:;!?”)]|$)|^\p{Lu}\p{Ll}+([\s….:]|$)/u.test(
    text,
  );
}

/**
 * Places where strings are meant for the machine or for the programmer: module names, types,
 * attributes that name things, and what is thrown where only a fault of ours can lead.
 *
 * @param {any} node
 */
function isMachine(node) {
  if (node.type === 'ImportDeclaration' || node.type === 'ExportAllDeclaration') return true;
  if (node.type === 'JSXAttribute') return machineAttributes.test(nameOf(node));
  if (node.type === 'ThrowStatement')
    return /^(Range|Type)?Error$/.test(node.argument?.callee?.name);
  return /^TS(Interface|TypeAlias|TypeAnnotation|TypeParameter)/.test(node.type);
}

/** Starts of paths to look at, given by hand; without them, everything. */
const asked = process.argv.length > 2 ? process.argv.slice(2) : ['src/'];

/** Reads the project, prints what was found, and returns whether all is well. */
function checkProject() {
  const project = fileURLToPath(new URL('..', import.meta.url));
  const files = readdirSync(join(project, 'src'), { recursive: true, encoding: 'utf8' })
    .map((name) => `src/${name.replaceAll('\\', '/')}`)
    .filter((file) => /\.tsx?$/.test(file) && !file.startsWith('src/words/'))
    .filter((file) => asked.some((start) => file.startsWith(start)))
    .sort();
  const found = files.flatMap((file) =>
    strayTexts(file, readFileSync(join(project, file), 'utf8')),
  );
  for (const line of found) console.error(line);
  console.log(
    `${files.length} files leave their text to src/words${found.length ? `, but for ${found.length} places` : ''}`,
  );
  return found.length === 0;
}

const isMain = process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href;
if (isMain && !checkProject()) process.exitCode = 1;
