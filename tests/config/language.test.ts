import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { filledIn, language, pageWords } from '../../.config/language.mjs';

const page = readFileSync(new URL('../../src/index.html', import.meta.url), 'utf8');

test('the page has no text of its own: title, description, language and the rest are words', () => {
  const marked = Object.fromEntries(
    Object.keys({ ...pageWords, language }).map((name) => [name, `⟦${name}⟧`]),
  );
  const filled = filledIn(page, marked);
  expect(filled).toContain('<html lang="⟦language⟧">');
  expect(filled).toContain('<title>⟦title⟧</title>');
  expect(filled).toContain('content="⟦description⟧"');
  const texts = filled.replace(/⟦\w+⟧/g, '').match(/>[^<]*\p{L}[^<]*</gu);
  expect(texts).toBeNull();
});

test('signs of markup in the words stay text', () => {
  const html = '<title>{title}</title><meta content="{title}" />';
  expect(filledIn(html, { title: '"Körbe" & <b>' })).toBe(
    '<title>&quot;Körbe&quot; &amp; &lt;b&gt;</title><meta content="&quot;Körbe&quot; &amp; &lt;b&gt;" />',
  );
});

test('a place without words is told', () => {
  expect(() => filledIn('<p>{nothing}</p>', {})).toThrow('no words for {nothing}');
});
