import { expect, test } from 'vitest';
import { secondMoment, sectionArea } from '../../../src/model/strand/section.ts';

/** Area and second moment about the centroid of a section whose half width at height y is `half(y)`. */
function summed(height: number, half: (y: number) => number) {
  const steps = 200_000;
  const dy = height / steps;
  let [area, first, second] = [0, 0, 0];
  for (let i = 0; i < steps; i++) {
    const y = (i + 0.5) * dy;
    const strip = 2 * half(y) * dy;
    area += strip;
    first += strip * y;
    second += strip * y * y;
  }
  return { area, moment: second - (first * first) / area };
}

test.each([
  ['flat', 12.7, 1.2, () => 6.35],
  ['round', 3, 3, (y: number) => Math.sqrt(1.5 ** 2 - (y - 1.5) ** 2)],
  ['half-round', 10, 5, (y: number) => 5 * Math.sqrt(1 - (y / 5) ** 2)],
  ['flat-oval', 6, 2, (y: number) => 3 * Math.sqrt(1 - (y / 2) ** 2)],
] as const)('area and second moment of a %s strand are those of its outline', (...strand) => {
  const [section, width, thickness, half] = strand;
  const { area, moment } = summed(thickness, half);
  expect(sectionArea({ section, width, thickness }) / area).toBeCloseTo(1, 5);
  expect(secondMoment({ section, width, thickness }) / moment).toBeCloseTo(1, 5);
});
