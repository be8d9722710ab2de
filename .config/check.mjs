/** Runs every check that needs no test, all of them, and fails if one did. */
import { stage } from './stage.mjs';

const checks = ['format', 'types', 'unused', 'imports', 'text'];
const failed = checks.filter(
  (name) => !stage(`check ${name}`, 'npm', ['run', '--silent', `check:${name}`]),
);
if (failed.length) {
  console.error(`\nchecks that failed: ${failed.join(', ')}`);
  process.exitCode = 1;
}
