/** Builds the app, serves it and says where. `--host` and `--port` choose the address. */
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { build } from 'vite';
import { serveApp } from './serve.mjs';

const { values } = parseArgs({
  options: { host: { type: 'string' }, port: { type: 'string' } },
});
const port = values.port === undefined ? undefined : Number(values.port);
if (port !== undefined && !(Number.isInteger(port) && port > 0 && port < 65536)) {
  throw new Error(`--port must be a whole number from 1 to 65535, but is "${values.port}"`);
}

console.log('Building Girthline …');
const project = fileURLToPath(new URL('..', import.meta.url));
await build({ configFile: `${project}vite.config.ts`, root: `${project}src`, logLevel: 'warn' });
const { address } = await serveApp({ host: values.host, port });
console.log(`Girthline is at ${address}`);
console.log('Ctrl+C stops it.');

// npm's shell passes no signal on: when npm is stopped, we are orphaned and stop too.
if (process.env.npm_lifecycle_event) {
  const parent = process.ppid;
  setInterval(() => process.ppid !== parent && process.exit(), 500);
}
