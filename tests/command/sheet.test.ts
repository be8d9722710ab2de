import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test, vi } from 'vitest';
import { rowsCsv } from '../../src/export/rowsCsv.ts';
import { shapeJson } from '../../src/export/shapeJson.ts';
import { settleBasket } from '../../src/model/settleBasket.ts';
import { demos } from '../../src/plan/demo/demos.ts';
import { writePlan } from '../../src/plan/read.ts';
import { runSheet, scratch } from './sheet.ts';

/** Each test starts Node anew; a busy machine may take its time. */
vi.setConfig({ testTimeout: 120_000 });

const { plan } = demos[0];
const basket = settleBasket(plan);

test('--out makes the folder and writes the chart and the shape into it, and nothing else', () => {
  using place = scratch();
  const file = place.file('plan.girthline.json', writePlan(plan));
  expect(runSheet(file, '--out', place.out)).toEqual({ status: 0, stdout: '', stderr: '' });
  expect(readdirSync(place.out).sort()).toEqual([
    'gauges.pdf',
    'outlines.svg',
    'rows.csv',
    'shape.glb',
    'shape.json',
    'shape.stl',
    'sheet.pdf',
  ]);
  expect(readFileSync(join(place.out, 'rows.csv'), 'utf8')).toBe(rowsCsv(basket));
  const shape = JSON.parse(readFileSync(join(place.out, 'shape.json'), 'utf8'));
  expect(shape).toEqual(JSON.parse(JSON.stringify(shapeJson(basket))));
});

test('a second run writes over the first and gives the same', () => {
  using place = scratch();
  const file = place.file('plan.girthline.json', writePlan(plan));
  runSheet(file, '--out', place.out);
  const first = readFileSync(join(place.out, 'shape.json'), 'utf8');
  writeFileSync(join(place.out, 'shape.json'), 'something older');
  expect(runSheet(file, '--out', place.out).status).toBe(0);
  expect(readFileSync(join(place.out, 'shape.json'), 'utf8')).toBe(first);
});

test('--json prints the shape and nothing else, and writes nothing', () => {
  using place = scratch();
  const file = place.file('plan.girthline.json', writePlan(plan));
  const { status, stdout, stderr } = runSheet(file, '--json');
  expect(JSON.parse(stdout)).toEqual(JSON.parse(JSON.stringify(shapeJson(basket))));
  expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
  expect(readdirSync(place.folder)).toEqual(['plan.girthline.json']);
});

test('--time prints medians over 20 runs', () => {
  using place = scratch();
  const file = place.file('plan.girthline.json', writePlan(plan));
  const { status, stdout } = runSheet(file, '--time');
  const times = JSON.parse(stdout);
  const { ends, rows } = basket.summary;
  expect(times).toMatchObject({ runs: 20, ends, rows });
  for (const key of ['settleColdMs', 'settleWarmMs', 'meshMs'])
    expect(times[key]).toBeGreaterThan(0);
  expect(status).toBe(0);
});

test('a folder that cannot be made is a failure of its own kind and leaves nothing behind', () => {
  using place = scratch();
  const file = place.file('plan.girthline.json', writePlan(plan));
  const inTheWay = place.file('taken', 'a file');
  const { status, stdout, stderr } = runSheet(file, '--out', join(inTheWay, 'out'));
  expect(status).toBe(1);
  expect(stdout).toBe('');
  expect(stderr).toContain('taken');
  expect(readdirSync(place.folder).sort()).toEqual(['plan.girthline.json', 'taken']);
});

test('a file that cannot be put in its place leaves no part of the others', () => {
  using place = scratch();
  const file = place.file('plan.girthline.json', writePlan(plan));
  mkdirSync(join(place.folder, 'out', 'rows.csv', 'in the way'), { recursive: true });
  const { status } = runSheet(file, '--out', join(place.folder, 'out'));
  expect(status).toBe(1);
  expect(readdirSync(join(place.folder, 'out'))).toEqual(['rows.csv']);
});
