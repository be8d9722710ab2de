import fc from 'fast-check';
import { expect, test } from 'vitest';
import { besidePlace } from '../../../src/views/guide/besidePlace.ts';

const card = { width: 340, height: 200 };
const desktop = { width: 1440, height: 900 };

test('the card stands under a button, beside a tall room, and over what lies at the bottom', () => {
  const button = { left: 700, top: 10, width: 80, height: 34 };
  expect(besidePlace(card, button, desktop)).toEqual({ left: 570, top: 56 });
  const tall = { left: 1040, top: 50, width: 400, height: 850 };
  expect(besidePlace(card, tall, desktop)).toEqual({ left: 688, top: 688 });
  const low = { left: 10, top: 700, width: 800, height: 190 };
  expect(besidePlace(card, low, desktop)).toEqual({ left: 240, top: 488 });
});

test('wherever the place is, the card is whole in the window', () => {
  const px = (most: number) => fc.integer({ min: -most, max: most });
  const size = fc.integer({ min: 0, max: 3000 });
  fc.assert(
    fc.property(px(3000), px(3000), size, size, (left, top, width, height) => {
      const window = { width: 390, height: 740 };
      const at = besidePlace(card, { left, top, width, height }, window);
      expect(at.left).toBeGreaterThanOrEqual(12);
      expect(at.top).toBeGreaterThanOrEqual(12);
      expect(at.left + card.width).toBeLessThanOrEqual(window.width - 12);
      expect(at.top + card.height).toBeLessThanOrEqual(window.height - 12);
    }),
  );
});
