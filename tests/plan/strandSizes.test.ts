import { expect, test } from 'vitest';
import { limits } from '../../src/plan/limits.ts';
import { strandSections } from '../../src/plan/strand.ts';
import { sizeOf, strandSizes } from '../../src/plan/strandSizes.ts';

const sections = Object.entries(strandSizes);

test('every section of the document has sizes to choose from, and so has cane', () => {
  expect(Object.keys(strandSizes).sort()).toEqual([...strandSections, 'cane'].sort());
});

test.each(sections)('sizes of %s are in order, named once, and may stand in a plan', (_, sizes) => {
  expect(sizes.length).toBeGreaterThan(4);
  expect(new Set(sizes.map(({ name }) => name)).size).toBe(sizes.length);
  sizes.forEach(({ width, thickness }, i) => {
    expect(width).toBeGreaterThan(sizes[i - 1]?.width ?? 0);
    expect(width).toBeGreaterThanOrEqual(limits.width.least);
    expect(width).toBeLessThanOrEqual(limits.width.most);
    expect(thickness).toBeGreaterThanOrEqual(limits.thickness.least);
    expect(thickness).toBeLessThanOrEqual(width);
    expect(thickness).toBeGreaterThanOrEqual(sizes[i - 1]?.thickness ?? 0);
  });
});

test.each(sections)('every figure of %s says where it comes from', (_, sizes) => {
  for (const { sources } of sizes) {
    expect(Object.keys(sources)).toEqual(['name', 'width', 'thickness']);
    for (const source of Object.values(sources)) expect(source.length).toBeGreaterThan(7);
  }
});

test('a size named in inches is so many inches wide', () => {
  for (const size of [
    ...strandSizes.flat,
    ...strandSizes['flat-oval'],
    ...strandSizes['half-round'],
  ]) {
    const [, top = '', bottom = '1'] = /^(\d+)(?:\/(\d+))? in$/.exec(size.name) ?? [];
    expect(Math.abs(size.width - (25.4 * Number(top)) / Number(bottom))).toBeLessThan(0.051);
  }
});

test('round reed is as thick as it is wide, and half round half as thick', () => {
  for (const { width, thickness } of strandSizes.round) expect(thickness).toBe(width);
  for (const { width, thickness } of strandSizes['half-round']) {
    expect(Math.abs(thickness - width / 2)).toBeLessThan(0.06);
  }
});

test('numbers 5 and 12 are 1/8 and 3/8 in, as published', () => {
  const across = (name: string) => strandSizes.round.find((size) => size.name === name);
  expect(Math.abs((across('No. 5')?.width ?? 0) - 25.4 / 8)).toBeLessThan(0.1);
  expect(Math.abs((across('No. 12')?.width ?? 0) - (3 * 25.4) / 8)).toBeLessThan(0.1);
});

test('a strand is known by its size again, and one of one’s own by none', () => {
  expect(sizeOf({ section: 'flat', width: 12.7, thickness: 1.2 })?.name).toBe('1/2 in');
  expect(sizeOf({ section: 'flat', width: 12.7, thickness: 3 })).toBeUndefined();
});
