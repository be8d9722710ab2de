import { expect, test } from 'vitest';
import { dimensionSvg, textSvg } from '../../src/export/svgPieces.ts';

test('signs of markup in a text of the drawing stay signs', () => {
  const text = textSvg([0, 0], 'bord < 5 & plus > 3', 4);
  expect(text).toMatch(/^<text [^<>]*>bord &lt; 5 &amp; plus &gt; 3<\/text>$/);
  const dimension = dimensionSvg([0, 0], [10, 0], 'hauteur & <b>', 4);
  expect(dimension).toContain('>hauteur &amp; &lt;b&gt;</text>');
  expect(dimension).not.toContain('<b>');
});
