import fc from 'fast-check';
import { CholeskyDecomposition, Matrix } from 'ml-matrix';
import { expect, test } from 'vitest';
import type { Skyline } from '../../../src/model/settle/skyline.ts';
import { factor, skyline, solve } from '../../../src/model/settle/skyline.ts';

const parts = fc.double({ min: -1, max: 1, noNaN: true });

/** A skyline of `blocks` nodes, entries for it and a right-hand side. */
const anyProblem = fc.integer({ min: 1, max: 9 }).chain((blocks) =>
  fc.record({
    first: fc
      .array(fc.nat(), { minLength: blocks, maxLength: blocks })
      .map((list) => Int32Array.from(list, (value, block) => value % (block + 1))),
    entries: fc.array(parts, { minLength: 9 * blocks ** 2, maxLength: 9 * blocks ** 2 }),
    right: fc.array(parts, { minLength: 3 * blocks, maxLength: 3 * blocks }),
  }),
);

interface Problem {
  readonly first: Int32Array;
  readonly entries: readonly number[];
  readonly right: readonly number[];
}

/** The problem's matrix as a skyline and in full: symmetric, its diagonal heavy enough to be definite. */
function matrices({ first, entries }: Problem) {
  const size = 3 * first.length;
  const sky = skyline(first);
  const full = Matrix.zeros(size, size);
  for (let i = 0; i < size; i++) {
    const from = 3 * (first[Math.floor(i / 3)] ?? 0);
    for (let j = from; j < 3 * Math.floor(i / 3) + 3; j++) {
      // Within the diagonal tile both halves are kept: take the lower one for either.
      const [row, column] = i > j ? [i, j] : [j, i];
      const value = row === column ? size + 1 : (entries[row * size + column] ?? 0);
      sky.values[(sky.start[i] ?? 0) + j] = value;
      full.set(i, j, value);
      full.set(j, i, value);
    }
  }
  return { sky, full };
}

const at = (sky: Skyline, i: number, j: number) => sky.values[(sky.start[i] ?? 0) + j] ?? 0;

test('the factor of a skyline is the one that ml-matrix finds for the full matrix', () => {
  fc.assert(
    fc.property(anyProblem, (problem) => {
      const { sky, full } = matrices(problem);
      expect(factor(sky)).toBe(true);
      const lower = new CholeskyDecomposition(full).lowerTriangularMatrix;
      for (let i = 0; i < lower.rows; i++) {
        const from = 3 * (problem.first[Math.floor(i / 3)] ?? 0);
        for (let j = 0; j <= i; j++) {
          expect(j < from ? 0 : at(sky, i, j)).toBeCloseTo(lower.get(i, j), 12);
        }
      }
    }),
  );
});

test('solving with a factored skyline gives what ml-matrix gives', () => {
  fc.assert(
    fc.property(anyProblem, (problem) => {
      const { sky, full } = matrices(problem);
      factor(sky);
      const x = Float64Array.from(problem.right);
      solve(sky, x);
      const expected = new CholeskyDecomposition(full).solve(
        Matrix.columnVector([...problem.right]),
      );
      x.forEach((value, i) => {
        expect(value).toBeCloseTo(expected.get(i, 0), 12);
      });
    }),
  );
});

test('a matrix that is not positive definite is refused', () => {
  const sky = skyline(Int32Array.of(0, 0));
  for (let i = 0; i < 6; i++) sky.values[(sky.start[i] ?? 0) + i] = i === 4 ? -1 : 1;
  expect(factor(sky)).toBe(false);
});

test('a matrix with a NaN in it is refused', () => {
  const sky = skyline(Int32Array.of(0));
  sky.values.fill(Number.NaN);
  expect(factor(sky)).toBe(false);
});
