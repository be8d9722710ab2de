import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

const src = new URL('../../src/', import.meta.url);
/** Every way by which a text becomes part of a page, or is run. */
const ways =
  /innerHTML|outerHTML|insertAdjacentHTML|createContextualFragment|document\.write|DOMParser|srcdoc|dangerouslySet|\beval\(|new Function\(/;

test('nothing in src makes HTML or code out of a text', () => {
  const files = readdirSync(src, { recursive: true, encoding: 'utf8' }).filter((file) =>
    /\.tsx?$/.test(file),
  );
  expect(files.length).toBeGreaterThan(300);
  const found = files.filter((file) => ways.test(readFileSync(new URL(file, src), 'utf8')));
  expect(found).toEqual([]);
});
