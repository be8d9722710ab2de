/**
 * Everything that must hold, in stages: tools, checks, unit tests, build, browser runs. Ends at the
 * first stage that fails. `--unit` runs the unit tests only.
 *
 * The closing line counts tests; a stage that fails without a test to blame counts as one failure.
 */
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { stage } from './stage.mjs';
import { ensureTools } from './tools.mjs';

const { values } = parseArgs({ options: { unit: { type: 'boolean', default: false } } });
const results = mkdtempSync(join(tmpdir(), 'girthline-test-'));
let passed = 0;
let failed = 0;
let skipped = 0;

// a build that warns is a build that fails
process.env.GIRTHLINE_STRICT = 'yes';

const stages = values.unit
  ? [() => tests('unit')]
  : [
      ensureTools,
      () => stage('check', process.execPath, ['.config/check.mjs']),
      () => tests('unit'),
      () => stage('build', process.execPath, ['node_modules/vite/bin/vite.js', 'build']),
      () => tests('browser'),
    ];

try {
  const allPassed = stages.every((run) => run());
  if (!allPassed) {
    failed = Math.max(failed, 1);
    process.exitCode = 1;
  }
} finally {
  rmSync(results, { recursive: true, force: true });
}
if (skipped) console.log(`\n${skipped} not run`);
console.log(`\n${passed} passed, ${failed} failed`);

/**
 * Runs one vitest project and adds its results to the count.
 *
 * @param {'unit' | 'browser'} project
 */
function tests(project) {
  const file = join(results, `${project}.json`);
  const endedWell = stage(`${project} tests`, process.execPath, [
    'node_modules/vitest/vitest.mjs',
    'run',
    `--project=${project}`,
    '--reporter=default',
    '--reporter=json',
    `--outputFile.json=${file}`,
  ]);
  count(file);
  return endedWell;
}

/** @param {string} file a report of vitest's json reporter; absent if vitest itself fell over */
function count(file) {
  let report;
  try {
    report = JSON.parse(readFileSync(file, 'utf8'));
  } catch {
    return;
  }
  passed += report.numPassedTests;
  failed += report.numFailedTests;
  skipped += report.numPendingTests + report.numTodoTests;
  for (const { status, assertionResults } of report.testResults) {
    const hasTests = assertionResults.length > 0;
    if (status === 'failed' && !hasTests) failed += 1;
  }
}
