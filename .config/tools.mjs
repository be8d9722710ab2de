/** The programs beside Node that the tests need, where they are found and how they are had. */
import { spawnSync } from 'node:child_process';
import { accessSync, constants, existsSync, statSync } from 'node:fs';
import { delimiter, join } from 'node:path';

/**
 * @typedef {object} Tool
 * @property {string} purpose
 * @property {string} variable the environment variable that names its path
 * @property {readonly string[]} names looked for on the path, in this order
 * @property {readonly string[]} places looked at after that
 * @property {readonly string[]} debian the packages that bring it
 */

/** @type {Readonly<Record<'chromium' | 'pdftotext', Tool>>} */
const tools = {
  chromium: {
    purpose: 'the browser runs',
    variable: 'CHROMIUM_PATH',
    names: ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'chrome'],
    places: [
      '/usr/bin/chromium',
      '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
      '/Applications/Chromium.app/Contents/MacOS/Chromium',
      'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
    ],
    debian: ['chromium', 'fonts-dejavu-core'],
  },
  pdftotext: {
    purpose: 'reading back the PDF sheet (poppler)',
    variable: 'PDFTOTEXT_PATH',
    names: ['pdftotext'],
    places: ['/usr/bin/pdftotext'],
    debian: ['poppler-utils'],
  },
};

/**
 * The path of a tool, or undefined where there is none. A path given by its environment variable
 * is taken at its word and must be a program.
 *
 * @param {keyof typeof tools} name
 * @returns {string | undefined}
 */
export function toolPath(name) {
  const { variable, names, places } = tools[name];
  const given = process.env[variable];
  if (given) {
    if (isProgram(given)) return given;
    throw new Error(`${variable} must name a program that can be run, but is "${given}"`);
  }
  const folders = (process.env.PATH ?? '').split(delimiter).filter(Boolean);
  const onPath = names.flatMap((one) => folders.map((folder) => join(folder, one)));
  return [...onPath, ...places].find(isProgram);
}

/**
 * Sees that every tool is there. What is missing is installed if we are root on Debian; otherwise
 * it is said what is missing and how to get it.
 *
 * @returns {boolean} whether all are there
 */
export function ensureTools() {
  const missing = missingTools();
  if (missing.length && isRootOnDebian()) {
    const packages = missing.flatMap((name) => tools[name].debian);
    console.log(`installing ${packages.join(' ')} with apt-get`);
    apt(['update']) && apt(['install', '-y', '--no-install-recommends', ...packages]);
  }
  const still = missingTools();
  for (const name of still) {
    const { purpose, variable, debian } = tools[name];
    console.error(
      `${name} is missing; it is needed for ${purpose}.\n` +
        `  On Debian or Ubuntu, as root: apt-get install ${debian.join(' ')}\n` +
        `  Elsewhere: install it and set ${variable} to its path.`,
    );
  }
  return still.length === 0;
}

function missingTools() {
  /** @type {(keyof typeof tools)[]} */
  const names = ['chromium', 'pdftotext'];
  return names.filter((name) => toolPath(name) === undefined);
}

/** @param {string} path */
function isProgram(path) {
  try {
    accessSync(path, constants.X_OK);
    return statSync(path).isFile();
  } catch {
    return false;
  }
}

function isRootOnDebian() {
  return process.getuid?.() === 0 && existsSync('/etc/debian_version');
}

/** @param {readonly string[]} parts */
function apt(parts) {
  const { status } = spawnSync('apt-get', ['-q', ...parts], {
    stdio: ['ignore', 'inherit', 'inherit'],
    env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
  });
  return status === 0;
}
