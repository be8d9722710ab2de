/**
 * Where a text stops being JSON, and under which key.
 *
 * `JSON.parse` says only that it failed, in words that differ from browser to browser. This walks
 * the text once, with a stack of its own instead of recursion, so that no depth of nesting can
 * exhaust the machine; it also refuses what `JSON.parse` lets through: a key given twice, a key
 * named `__proto__`, and nesting deeper than any plan has.
 */
import { pathText, printable } from './problems.ts';

export interface JsonFault {
  readonly path: string;
  readonly found: string;
  readonly allowed: string;
}

/** Objects and lists inside one another. A plan has five. */
const deepestNesting = 32;

/** The first fault of `text`, or `undefined` if it is JSON that may be read. */
export function jsonFault(text: string): JsonFault | undefined {
  const levels: Level[] = [];
  let expected: Expected = 'value';
  let at = 0;

  const fault = (found: string, allowed: string): JsonFault => ({
    path: pathText(levels.flatMap(({ key }) => (key === undefined ? [] : [key]))),
    found,
    allowed,
  });

  for (;;) {
    const token = tokenAt(text, at);
    const end = token.start + token.text.length;
    const level = levels.at(-1);
    const unexpected = () => fault(`${shown(token)} ${place(text, token.start)}`, wanted[expected]);

    if (token.kind === 'end') return expected === 'end' ? undefined : unexpected();

    if (token.kind === 'close') {
      const closes = level && token.text === (level.isList ? ']' : '}');
      if (!closes || !(expected.startsWith('first') || expected === 'next')) return unexpected();
      levels.pop();
      expected = levels.length ? 'next' : 'end';
    } else if (expected === 'next') {
      if (token.text !== ',' || !level) return unexpected();
      if (typeof level.key === 'number') level.key += 1;
      expected = level.isList ? 'value' : 'key';
    } else if (expected === 'firstKey' || expected === 'key') {
      const key = token.kind === 'text' ? unquoted(token.text) : undefined;
      if (key === undefined || !level) return unexpected();
      level.key = key;
      if (level.keys.has(key)) return fault('this key a second time', 'every key once');
      if (key === '__proto__') return fault('an unknown key', 'a key of the design document');
      level.keys.add(key);
      expected = 'colon';
    } else if (expected === 'colon') {
      if (token.text !== ':') return unexpected();
      expected = 'value';
    } else if (expected === 'end') {
      return unexpected();
    } else if (token.kind === 'open') {
      if (levels.length === deepestNesting) {
        return fault('nesting without end', `at most ${deepestNesting} levels of nesting`);
      }
      const isList = token.text === '[';
      levels.push({ isList, key: isList ? 0 : undefined, keys: new Set() });
      expected = isList ? 'firstValue' : 'firstKey';
    } else if (token.kind === 'plain' || (token.kind === 'text' && isText(token.text))) {
      expected = levels.length ? 'next' : 'end';
    } else {
      return unexpected();
    }
    at = end;
  }
}

type Expected = 'value' | 'firstValue' | 'firstKey' | 'key' | 'colon' | 'next' | 'end';

/** A list or object that is open: the key or index we are at, and the keys already seen. */
interface Level {
  readonly isList: boolean;
  key: string | number | undefined;
  readonly keys: Set<string>;
}

interface Token {
  readonly kind: 'open' | 'close' | 'mark' | 'text' | 'plain' | 'end' | 'broken';
  readonly text: string;
  readonly start: number;
}

const wanted: Readonly<Record<Expected, string>> = {
  value: 'a number, words in double quotes, or what stands in [ ] or { }',
  firstValue: 'a number, words in double quotes, what stands in [ ] or { }, or the end of the list',
  firstKey: 'a key in double quotes or }',
  key: 'a key in double quotes',
  colon: 'a colon',
  next: 'a comma or a closing bracket',
  end: 'nothing after the last bracket',
};

const space = /[ \t\n\r]*/y;
const quoted = /"(?:[^"\\]|\\[\s\S])*"/y;
const plain = /(?:-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?|true|false|null)(?![\w.+-])/y;
const word = /"?[\w.+-]{1,20}|[\s\S]/y;

function tokenAt(text: string, at: number): Token {
  const start = at + (matchAt(space, text, at)?.length ?? 0);
  const first = text[start];
  if (first === undefined) return { kind: 'end', text: '', start };
  if (first === '{' || first === '[') return { kind: 'open', text: first, start };
  if (first === '}' || first === ']') return { kind: 'close', text: first, start };
  if (first === ',' || first === ':') return { kind: 'mark', text: first, start };
  const string = first === '"' ? matchAt(quoted, text, start) : undefined;
  if (string !== undefined) return { kind: 'text', text: string, start };
  const value = matchAt(plain, text, start);
  if (value !== undefined) return { kind: 'plain', text: value, start };
  return { kind: 'broken', text: matchAt(word, text, start) ?? first, start };
}

function matchAt(pattern: RegExp, text: string, at: number): string | undefined {
  pattern.lastIndex = at;
  return pattern.exec(text)?.[0];
}

function shown(token: Token): string {
  if (token.kind === 'end') return 'the end of the file';
  const short = token.text.length > 40 ? `${token.text.slice(0, 39)}…` : token.text;
  return printable(short);
}

function place(text: string, at: number): string {
  const before = text.slice(0, at).split('\n');
  return `at line ${before.length}, column ${(before.at(-1)?.length ?? 0) + 1}`;
}

/** The text inside a quoted token, or `undefined` if it holds a broken escape or a raw newline. */
function unquoted(token: string): string | undefined {
  try {
    return String(JSON.parse(token));
  } catch {
    return undefined;
  }
}

function isText(token: string): boolean {
  return unquoted(token) !== undefined;
}
