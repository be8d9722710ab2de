import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

const project = new URL('../../', import.meta.url);
const { dependencies, devDependencies } = JSON.parse(
  readFileSync(new URL('package.json', project), 'utf8'),
) as Record<'dependencies' | 'devDependencies', Readonly<Record<string, string>>>;
const listed = list(readFileSync(new URL('DEVELOPERS.md', project), 'utf8'));

test('DEVELOPERS.md lists the packages of package.json, no more and no fewer', () => {
  const packages = [...Object.keys(dependencies), ...Object.keys(devDependencies)];
  expect(packages.length).toBeGreaterThan(20);
  expect(listed.map(([name]) => name).sort()).toEqual(packages.sort());
});

test('each package has a reason, and one exact version', () => {
  for (const [name, reason] of listed) expect(`${name}: ${reason}`).toMatch(/: \S.{3,}/);
  for (const version of Object.values({ ...dependencies, ...devDependencies })) {
    expect(version).toMatch(/^\d+\.\d+\.\d+(-[\w.]+)?$/);
  }
});

/** Name and reason by row of the table under "What we build on". */
function list(text: string): (readonly [name: string, reason: string])[] {
  const [section = ''] = text.split('## What we build on')[1]?.split('\n## ') ?? [];
  return [...section.matchAll(/^\| `([^`]+)`\s*\| (.*?)\s*\|$/gm)].map(
    ([, name = '', reason = '']) => [name, reason],
  );
}
