/**
 * Where a text stops being JSON, and under which key.
 *
 * `JSON.parse` says only that it failed, in words that differ from browser to browser. This walks
 * the text once, with a stack of its own instead of recursion, so that no depth of nesting can
 * exhaust the machine; it also refuses what `JSON.parse` lets through: a key given twice, a key
 * named `__proto__`, and nesting deeper than any plan has.
 */
import { refusalWords } from '#words/refusals.ts';
import { pathText, printable } from './problems.ts';

export interface JsonFault {
  readonly path: string;
  readonly found: string;
  readonly allowed: string;
}

const says = refusalWords.json;

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
    const unexpected = () => fault(foundAt(text, token), says.wanted[expected]);

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
      if (level.keys.has(key)) return fault(says.secondKey, says.everyKeyOnce);
      if (key === '__proto__') return fault(refusalWords.found.unknownKey, says.documentKey);
      level.keys.add(key);
      expected = 'colon';
    } else if (expected === 'colon') {
      if (token.text !== ':') return unexpected();
      expected = 'value';
    } else if (expected === 'end') {
      return unexpected();
    } else if (token.kind === 'open') {
      if (levels.length === deepestNesting) {
        return fault(says.endlessNesting, says.mostNesting(deepestNesting));
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
  if (token.kind === 'end') return says.endOfFile;
  const short = token.text.length > 40 ? `${token.text.slice(0, 39)}…` : token.text;
  return printable(short);
}

function foundAt(text: string, token: Token): string {
  const before = text.slice(0, token.start).split('\n');
  return says.foundAt(shown(token), before.length, (before.at(-1)?.length ?? 0) + 1);
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
