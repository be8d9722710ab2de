/** Published patterns; the sources are listed in docs/agreement.md. */
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { agreementText, errors, farOff, spread, worstSizes } from './agreement.ts';
import { error } from './pattern.ts';
import { publishedPatterns } from './publishedPatterns.ts';

const patterns = publishedPatterns();

test('all 22 rows of the table are there, each with a figure, a rule, or why it has neither', () => {
  expect(patterns.map(({ number }) => number)).toEqual(Array.from({ length: 22 }, (_, i) => i + 1));
  for (const { figures, rules, leftOut } of patterns) {
    expect(figures.length + rules.length > 0 || leftOut !== undefined).toBe(true);
  }
});

for (const { number, name, figures, rules } of patterns) {
  for (const figure of figures) {
    test(`${number}, ${name}: ${figure.what} is within 12 %, or there is a reason`, () => {
      expect(Number.isFinite(figure.predicted)).toBe(true);
      expect(Math.abs(error(figure)) <= farOff || figure.because !== undefined).toBe(true);
    });
  }
  for (const { rule, kept } of rules) {
    test(`${number}, ${name}: ${rule}`, () => expect(kept).toBe(true));
  }
}

test('half of the finished sizes are within 5 %, and so are half of the patterns', () => {
  expect(spread(errors(patterns, 'size')).median).toBeLessThan(0.05);
  expect(spread(worstSizes(patterns)).median).toBeLessThan(0.05);
});

test('sums over bases, gaps and rows come out within 4 %', () => {
  expect(spread(errors(patterns, 'sum')).worst).toBeLessThan(0.04);
});

test('docs/agreement.md is written from this run', () => {
  const written = readFileSync(new URL('../../../docs/agreement.md', import.meta.url), 'utf8');
  const remedy = 'docs/agreement.md is out of date: run `npm run docs:agreement`';
  expect(written === agreementText(patterns), remedy).toBe(true);
});
