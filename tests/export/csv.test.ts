import fc from 'fast-check';
import papaparse from 'papaparse';
import { expect, test } from 'vitest';
import { csv } from '../../src/export/csv.ts';

test('quotes what holds a comma, a quote or a line break, and doubles the quotes', () => {
  expect(csv([['a,b', 'say "so"', 'two\nlines', 3]])).toBe('"a,b","say ""so""","two\nlines",3\r\n');
});

test('any texts come back from a CSV library as they went in', () => {
  const table = fc.array(fc.array(fc.string(), { minLength: 2, maxLength: 4 }), { minLength: 1 });
  fc.assert(
    fc.property(table, (lines) => {
      const { data } = papaparse.parse<string[]>(csv(lines), { delimiter: ',', newline: '\r\n' });
      expect(data.slice(0, -1)).toEqual(lines);
    }),
  );
});
