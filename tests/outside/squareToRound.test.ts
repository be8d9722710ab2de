/** What must emerge without being drawn in. Source: `shaping-model.md`, "What must emerge". */
import { describe, expect, test } from 'vitest';
import type { Basket } from '../../src/model/basket.ts';
import { settleBasket } from '../../src/model/settleBasket.ts';
import { matPlan, widthsAcross } from '../model/settle/shapes.ts';

/** Least and most width of row `row` over the diameter of the circle that its ends would lie on. */
function roundness({ net, positions }: Basket, row: number) {
  const { nodes, girth, cornerLength } = net.rows[row] ?? { nodes: [], girth: 1, cornerLength: 0 };
  const { least, most } = widthsAcross(positions, nodes);
  const diameter = (girth - cornerLength) / Math.PI;
  return { least: least / diameter - 1, most: most / diameter - 1 };
}

describe('a straight girth line over a square creased base of 9 + 9 stakes', () => {
  const basket = settleBasket(matPlan({ lengthwise: 9, crosswise: 9, rows: 30 }));

  test('gives a rim whose least and most width are within 2 % of a circle of diameter girth/π', () => {
    const { net, positions } = basket;
    const { nodes = [], girth = 0 } = net.rows[30] ?? {};
    const { least, most } = widthsAcross(positions, nodes);
    expect(Math.abs((least * Math.PI) / girth - 1)).toBeLessThan(0.02);
    expect(Math.abs((most * Math.PI) / girth - 1)).toBeLessThan(0.02);
  });

  test('is square at the base and rounds off as it rises', () => {
    const spread = [1, 4, 7, 10].map((row) => {
      const { least, most } = roundness(basket, row);
      return most - least;
    });
    expect(spread[0]).toBeGreaterThan(0.2);
    spread.slice(1).forEach((value, i) => {
      expect(value).toBeLessThan(spread[i] ?? 0);
    });
  });

  test('is a circle within 3 % from half a side above the base on', () => {
    // Half a side is 78 mm, 16 rows of 5 mm.
    for (let row = 16; row <= 30; row++) {
      const { least, most } = roundness(basket, row);
      expect(least).toBeGreaterThan(-0.03);
      expect(most).toBeLessThan(0.03);
    }
  });

  test('turns round whichever way the corners are held, as long as the hold ends', () => {
    const held = settleBasket(
      matPlan({
        lengthwise: 9,
        crosswise: 9,
        rows: 30,
        base: { corners: { kind: 'square', hold: 1, holdRows: 10 } } as never,
      }),
    );
    const { least, most } = roundness(held, 30);
    expect(least).toBeGreaterThan(-0.02);
    expect(most).toBeLessThan(0.02);
  });
});

describe('a corner hold of 1 that falls to 0 at row 300', () => {
  const rows = 16;
  const corners = { kind: 'square', hold: 1, holdRows: 300 };
  const { net, positions } = settleBasket(
    matPlan({ lengthwise: 9, crosswise: 9, rows, base: { corners } as never }),
  );
  const { nodes = [], girth = 0 } = net.rows[rows] ?? {};

  // Closed form: a square is a quarter of its girth from side to side; a circle would be 27 % more.
  test('keeps the outline of a square base for 16 rows, within 1.5 % from side to side', () => {
    const { least } = widthsAcross(positions, nodes);
    expect(Math.abs((4 * least) / girth - 1)).toBeLessThan(0.015);
  });
});

describe('a long base of 5 + 13 stakes', () => {
  const basket = settleBasket(matPlan({ lengthwise: 5, crosswise: 13, rows: 60 }));
  const square = settleBasket(matPlan({ lengthwise: 9, crosswise: 9, rows: 60 }));
  const spread = (of: Basket, row: number) => {
    const { least, most } = roundness(of, row);
    return most - least;
  };

  test('stays oblong longer than a square base of the same girth stays square', () => {
    expect(basket.net.rows[0]?.girth).toBeCloseTo(square.net.rows[0]?.girth ?? 0, 6);
    for (const row of [10, 15, 20]) {
      expect(spread(basket, row)).toBeGreaterThan(4 * spread(square, row));
    }
  });

  test('comes nearly round, within 4 %, at the rim of a wall as high as it is wide', () => {
    const { least, most } = roundness(basket, 60);
    expect(least).toBeGreaterThan(-0.04);
    expect(most).toBeLessThan(0.04);
  });
});
