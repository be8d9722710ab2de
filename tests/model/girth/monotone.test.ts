import { curveMonotoneX } from 'd3-shape';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { monotoneCubic } from '../../../src/model/girth/monotone.ts';

/**
 * The data "RPN 14" with which Fritsch & Carlson (SIAM J. Numer. Anal. 17, 1980) show the
 * overshoot of other splines; the figures are as the open test suites of spline libraries quote
 * them.
 */
const rpn14 = {
  xs: [7.99, 8.09, 8.19, 8.7, 9.2, 10, 12, 15, 20],
  ys: [0, 2.76429e-5, 4.37498e-2, 0.169183, 0.469428, 0.94374, 0.998636, 0.999919, 0.999994],
};

const anyPoints = fc
  .array(
    fc.tuple(fc.double({ min: 0.01, max: 30, noNaN: true }), fc.integer({ min: 0, max: 900 })),
    {
      minLength: 1,
      maxLength: 10,
    },
  )
  .map((steps) => {
    let x = -3;
    const xs = steps.map(([step]) => (x += step));
    return { xs, ys: steps.map(([, y]) => y) };
  });

/** The line as d3-shape draws it: for each stretch, its Bézier polygon. */
function d3Stretches({ xs, ys }: { xs: readonly number[]; ys: readonly number[] }) {
  const stretches: number[][] = [];
  let from = [0, 0];
  const goTo = (...numbers: number[]) => {
    stretches.push([...from, ...numbers]);
    from = numbers.slice(-2);
  };
  const curve = curveMonotoneX({
    moveTo: (x: number, y: number) => (from = [x, y]),
    lineTo: (x: number, y: number) => goTo(...thirds(from, [x, y]), x, y),
    bezierCurveTo: goTo,
    closePath: () => undefined,
  } as unknown as CanvasRenderingContext2D);
  curve.lineStart();
  for (const [i, x] of xs.entries()) curve.point(x, ys[i] ?? 0);
  curve.lineEnd();
  return stretches;
}

function thirds([x0 = 0, y0 = 0]: number[], [x3 = 0, y3 = 0]: number[]): number[] {
  return [
    x0 + (x3 - x0) / 3,
    y0 + (y3 - y0) / 3,
    x0 + (2 * (x3 - x0)) / 3,
    y0 + (2 * (y3 - y0)) / 3,
  ];
}

function expectNoOvershoot({ xs, ys }: { xs: readonly number[]; ys: readonly number[] }): void {
  const line = monotoneCubic(xs, ys);
  for (let i = 0; i + 1 < xs.length; i++) {
    const [x0 = 0, x1 = 0] = [xs[i], xs[i + 1]];
    const [y0 = 0, y1 = 0] = [ys[i], ys[i + 1]];
    let before = y0;
    for (let n = 0; n <= 40; n++) {
      const y = line(Math.min(x0 + ((x1 - x0) * n) / 40, x1));
      expect(y).toBeGreaterThanOrEqual(Math.min(y0, y1));
      expect(y).toBeLessThanOrEqual(Math.max(y0, y1));
      // From one point to the next it never turns back.
      expect((y - before) * Math.sign(y1 - y0)).toBeGreaterThanOrEqual(-1e-9);
      before = y;
    }
  }
}

test('the line agrees with curveMonotoneX of d3-shape', () => {
  fc.assert(
    fc.property(anyPoints, (points) => {
      const line = monotoneCubic(points.xs, points.ys);
      for (const [x0 = 0, y0 = 0, , y1 = 0, , y2 = 0, x3 = 0, y3 = 0] of d3Stretches(points)) {
        for (let n = 0; n <= 8; n++) {
          const t = n / 8;
          const s = 1 - t;
          const y = s * s * s * y0 + 3 * s * s * t * y1 + 3 * s * t * t * y2 + t * t * t * y3;
          expect(line(x0 + (x3 - x0) * t)).toBeCloseTo(y, 7);
        }
      }
    }),
  );
});

test('d3-shape draws as many stretches as there are, so the comparison compares', () => {
  expect(d3Stretches(rpn14)).toHaveLength(8);
});

test('the data of Fritsch and Carlson rise all the way', () => {
  expectNoOvershoot(rpn14);
});

test('the line never overshoots between two points', () => {
  fc.assert(fc.property(anyPoints, expectNoOvershoot));
});

test('the line goes through its points', () => {
  const line = monotoneCubic(rpn14.xs, rpn14.ys);
  expect(rpn14.xs.map(line)).toEqual(rpn14.ys);
});

test('two points are joined by a straight line', () => {
  const line = monotoneCubic([2, 10], [30, 70]);
  expect([2, 4, 6, 10].map(line)).toEqual([30, 40, 50, 70]);
});

test('points on a straight line give that line', () => {
  const line = monotoneCubic([0, 1, 5, 6], [10, 12, 20, 22]);
  for (let x = 0; x <= 6; x += 0.25) expect(line(x)).toBeCloseTo(10 + 2 * x, 12);
});

test('beyond its points the line stays level', () => {
  const line = monotoneCubic([2, 4, 10], [30, 50, 70]);
  expect([-9, 2, 10, 99].map(line)).toEqual([30, 30, 70, 70]);
});

test('one point is a level line', () => {
  expect([-1, 3, 9].map(monotoneCubic([3], [5]))).toEqual([5, 5, 5]);
});

test('a belly of three points is level at its highest', () => {
  const line = monotoneCubic([0, 10, 20], [500, 600, 520]);
  expect(line(10) - line(9.999)).toBeLessThan(1e-4);
  expect(line(10) - line(10.001)).toBeLessThan(1e-4);
});

test('the line scales with its points, from 1e-9 to 1e9', () => {
  const line = monotoneCubic(rpn14.xs, rpn14.ys);
  for (const factor of [1e-9, 1e-3, 1e3, 1e9]) {
    const scaled = monotoneCubic(
      rpn14.xs.map((x) => x * factor),
      rpn14.ys.map((y) => y * factor),
    );
    expect(scaled(9.5 * factor) / factor).toBeCloseTo(line(9.5), 9);
  }
});

test('points that do not go forward are named', () => {
  expect(() => monotoneCubic([1, 1], [2, 3])).toThrow('xs[1] is 1, allowed more than xs[0], 1');
  expect(() => monotoneCubic([], [])).toThrow('0 xs and 0 ys');
});
