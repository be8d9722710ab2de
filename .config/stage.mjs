import { spawnSync } from 'node:child_process';

/**
 * Runs one command with our own input and output, and says its name, outcome and time.
 *
 * @param {string} name what the stage is called in the output
 * @param {string} command
 * @param {readonly string[]} parts
 * @returns {boolean} whether it ended well
 */
export function stage(name, command, parts) {
  const began = performance.now();
  console.log(`\n== ${name}`);
  const { status, error } = spawnSync(command, parts, {
    stdio: 'inherit',
    shell: process.platform === 'win32' && command === 'npm',
  });
  if (error) console.error(error.message);
  const seconds = ((performance.now() - began) / 1000).toFixed(1);
  console.log(`== ${name}: ${status === 0 ? 'passed' : 'failed'} in ${seconds} s`);
  return status === 0;
}
