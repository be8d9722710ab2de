import { expect, test } from 'vitest';
import { outlinesSvg } from '../../src/export/outlinesSvg.ts';
import { formatLength } from '../../src/plan/units.ts';
import { settledDemo } from './settledDemo.ts';

const basket = settledDemo('in');
const drawing = outlinesSvg(basket);

test('a drawing of the outlines says how large the basket is, in the unit of its plan', () => {
  const { unit } = basket.plan.display;
  const { height, rim, baseLength } = basket.summary;
  expect(drawing.includes(`>rim ${formatLength(rim.length, unit)}<`)).toBe(true);
  expect(drawing.includes(`>rim ${formatLength(rim.width, unit)}<`)).toBe(true);
  expect(drawing.includes(`>wall ${formatLength(height, unit)}<`)).toBe(true);
  expect(drawing.includes(`base ${formatLength(baseLength, unit)} long`)).toBe(true);
});

test('a drawing is in true size, one unit a millimetre', () => {
  const [, width, height] = /width="([\d.]+)mm" height="([\d.]+)mm"/.exec(drawing) ?? [];
  expect(drawing.includes(`viewBox="0 0 ${width} ${height}"`)).toBe(true);
  expect(/NaN|Infinity|undefined/.test(drawing)).toBe(false);
});

test('a drawing has rim and handle from both sides, behind the wall and before it', () => {
  const kinds = [...drawing.matchAll(/<path class="(finish|body|edge)"/g)].map(([, kind]) => kind);
  // two ears and a bow, the wall, the hoop
  const one = ['finish', 'finish', 'finish', 'body', 'edge', 'finish'];
  expect(kinds).toEqual([...one, ...one]);
});

test('a name with signs of markup stays a name', () => {
  const named = { ...basket, plan: { ...basket.plan, name: 'Pears < plums & <b>' } };
  expect(outlinesSvg(named)).toContain('<title>Pears &lt; plums &amp; &lt;b&gt;</title>');
});
