/**
 * Holds the import table of `rooms.mjs`: who may import whom in `src`, which npm packages each room
 * may know, no drawers of helpers, no barrels. Prints one line per violation and fails if any.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join, posix } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { parseSync } from 'vite';
import { drawerNames, entrance, longFile, modelOrder, rooms } from './rooms.mjs';

/**
 * @typedef {object} Import
 * @property {string} from the specifier as written
 * @property {number} line counted from 1
 * @property {boolean} typeOnly vanishes when the types are stripped
 */

/**
 * What is wrong with one file's name, place and imports.
 *
 * @param {string} file path from the project, with `/`, as `src/mesh/wall.ts`
 * @param {string} source its text
 * @returns {string[]} one sentence per violation
 */
export function violations(file, source) {
  const found = nameViolations(file);
  const { imports, isBarrel } = readModule(file, source);
  if (isBarrel) found.push(`${file}: only passes on what others export; import from the source`);
  if (!file.startsWith('src/')) return found;
  const room = roomOf(file);
  if (!(room in rooms)) return [...found, `${file}: src has no room "${room}" (.config/rooms.mjs)`];
  for (const one of imports) {
    const problem = importProblem(file, room, one);
    if (problem) found.push(`${file}:${one.line}: ${problem}`);
  }
  return found;
}

/**
 * @param {string} file
 * @returns {string[]}
 */
function nameViolations(file) {
  const parts = file.split('/').map((part) => part.replace(/\.(test\.)?[mc]?[jt]sx?$/, ''));
  const found = parts
    .filter((part) => drawerNames.includes(part))
    .map((part) => `${file}: "${part}" does not say what is inside; name it after the thing`);
  if (parts.at(-1) === 'index') found.push(`${file}: an index file; import from the source`);
  return found;
}

/**
 * @param {string} file
 * @param {string} room
 * @param {Import} one
 * @returns {string | undefined}
 */
function importProblem(file, room, { from, typeOnly }) {
  const allowed = rooms[room];
  if (!allowed) return `no room "${room}"`;
  const isWords = from.startsWith('#words/');
  if (!from.startsWith('.') && !isWords) {
    const name = packageOf(from);
    if (allowed.packages.includes(name)) return undefined;
    return `${room} may not import the package ${name}; it may: ${listed(allowed.packages)}`;
  }
  const target = isWords
    ? from.replace('#words/', 'src/words/')
    : posix.join(posix.dirname(file), from.replace(/\?.*$/, ''));
  if (!target.startsWith('src/')) return `reaches outside src: ${from}`;
  const there = roomOf(target);
  if (there === room) return typeOnly ? undefined : orderProblem(file, target);
  if (there === 'words')
    return isWords ? undefined : `words are named #words/…, not by path: ${from}`;
  if (allowed.rooms.includes(there)) return undefined;
  if (allowed.typesOf?.includes(there)) {
    return typeOnly ? undefined : `${room} may import only types from ${there}: use "import type"`;
  }
  return `${room} may not import ${there}; it may: ${listed([...allowed.rooms, ...(allowed.typesOf ?? [])])}`;
}

/**
 * @param {string} file
 * @param {string} target
 * @returns {string | undefined}
 */
function orderProblem(file, target) {
  if (roomOf(file) !== 'model') return undefined;
  const [here, there] = [file, target].map((path) => path.split('/')[2] ?? '');
  if (!here || !there) return undefined;
  const [own, other] = [modelOrder.indexOf(here), modelOrder.indexOf(there)];
  if (own < 0 || other < 0 || other <= own) return undefined;
  return `model/${here} may not import model/${there}, which comes after it`;
}

/** @param {string} path */
function roomOf(path) {
  const parts = path.split('/');
  return parts.length === 2 ? entrance : (parts[1] ?? '');
}

/** @param {string} specifier */
function packageOf(specifier) {
  if (specifier.startsWith('node:')) return 'node:';
  return specifier
    .split('/')
    .slice(0, specifier.startsWith('@') ? 2 : 1)
    .join('/');
}

/** @param {readonly string[]} names */
function listed(names) {
  return names.length ? names.join(', ') : 'none';
}

/**
 * Every way one file names another: import, export from, import(), a type's import(), and
 * `new URL('…', import.meta.url)`, by which workers start.
 *
 * @param {string} file
 * @param {string} source
 */
function readModule(file, source) {
  const { program, errors } = parseSync(file, source);
  if (errors.length) throw new Error(`${file} does not parse: ${errors[0]?.message}`);
  /** @type {Import[]} */
  const imports = [];
  walk(program, (node) => {
    const specifier = specifierOf(node);
    if (specifier === undefined) return;
    const line = source.slice(0, node.start).split('\n').length;
    const kind = node.importKind ?? node.exportKind;
    imports.push({
      from: specifier,
      line,
      typeOnly: kind === 'type' || node.type === 'TSImportType',
    });
  });
  const statements = program.body;
  const isBarrel =
    statements.length > 0 &&
    statements.every((one) => one.type.startsWith('Export') && 'source' in one && one.source);
  return { imports, isBarrel };
}

/**
 * @param {any} node
 * @returns {string | undefined}
 */
function specifierOf(node) {
  if (node.type === 'NewExpression') {
    const [path, base] = node.arguments;
    const isOurs = node.callee.name === 'URL' && base?.object?.type === 'MetaProperty';
    return isOurs ? path.value : undefined;
  }
  const isImport = /^(Import(Declaration|Expression)|Export(Named|All)Declaration|TSImportType)$/;
  return isImport.test(node.type) ? node.source?.value : undefined;
}

/**
 * @param {any} node
 * @param {(node: any) => void} visit
 */
function walk(node, visit) {
  if (node === null || typeof node !== 'object') return;
  if (typeof node.type === 'string') visit(node);
  for (const value of Object.values(node)) walk(value, visit);
}

/** Reads the project, prints what was found, and returns whether all is well. */
function checkProject() {
  const project = fileURLToPath(new URL('..', import.meta.url));
  const files = ['src', 'tests', '.config']
    .flatMap((folder) =>
      readdirSync(join(project, folder), { recursive: true, encoding: 'utf8' }).map(
        (name) => `${folder}/${name.replaceAll('\\', '/')}`,
      ),
    )
    .filter((file) => /\.m?tsx?$|\.mjs$/.test(file) && !file.endsWith('.d.ts'))
    .sort();
  let failed = 0;
  for (const file of files) {
    const source = readFileSync(join(project, file), 'utf8');
    const lines = source.split('\n').length - 1;
    if (lines > longFile) console.log(`note: ${file} has ${lines} lines (${longFile} is long)`);
    for (const message of violations(file, source)) {
      console.error(message);
      failed += 1;
    }
  }
  console.log(
    `${files.length} files keep to their rooms${failed ? `, but for ${failed} places` : ''}`,
  );
  return failed === 0;
}

const isMain = process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href;
if (isMain && !checkProject()) process.exitCode = 1;
