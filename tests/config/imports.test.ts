import { expect, test } from 'vitest';
import { violations } from '../../.config/imports.mjs';

const refused: readonly (readonly [file: string, source: string, message: RegExp])[] = [
  ['src/charts/Rows.tsx', "import { rows } from '../model/read/rows.ts'", /only types from model/],
  ['src/model/net/net.ts', "import { z } from 'zod'", /may not import the package zod/],
  ['src/model/net/net.ts', "import { settle } from '../settle/settle.ts'", /comes after it/],
  ['src/mesh/wall.ts', "import { Wall } from '../scene/Wall.tsx'", /mesh may not import scene/],
  ['src/mesh/wall.ts', "export const scene = import('../scene/Wall.tsx')", /not import scene/],
  ['src/mesh/wall.ts', "type Wall = import('three').Mesh", /the package three/],
  ['src/plan/plan.ts', "new Worker(new URL('../work/worker.ts', import.meta.url))", /import work/],
  ['src/export/csv.ts', "import { readFile } from 'node:fs/promises'", /the package node:/],
  ['src/panel/Panel.tsx', "import { expect } from '../../tests/expect.ts'", /outside src/],
  ['src/mesh/helpers/wall.ts', '', /"helpers" does not say/],
  ['src/mesh/types.ts', '', /"types" does not say/],
  ['src/mesh/index.ts', '', /an index file/],
  ['src/mesh/all.ts', "export { wall } from './wall.ts'", /only passes on/],
  ['src/store/store.ts', '', /no room "store"/],
];

test.each(refused)('%s may not hold: %s', (file, source, message) => {
  expect(violations(file, source).join('\n')).toMatch(message);
});

const accepted: readonly (readonly [file: string, source: string])[] = [
  ['src/model/net/net.ts', "import type { Plan } from '../../plan/plan.ts'"],
  ['src/model/strand/section.ts', "import type { Strand } from '../net/net.ts'"],
  ['src/model/settle/settle.ts', "import { net } from '../net/net.ts'"],
  ['src/scene/Stage.tsx', "import { STL } from 'three/addons/exporters/STLExporter.js'"],
  ['src/App.tsx', "import { Bench } from './views/Bench.tsx'; import './style.css'"],
  ['src/command/sheet.ts', "import { readFile } from 'node:fs/promises'"],
];

test.each(accepted)('%s may hold: %s', (file, source) => {
  expect(violations(file, source)).toEqual([]);
});
