import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { preview } from 'vite';

const project = fileURLToPath(new URL('..', import.meta.url));

/**
 * Serves the built app from `dist`. A file that is not there is answered with 404.
 *
 * @param {{ host?: string | undefined, port?: number | undefined }} [options] `host` 127.0.0.1
 *   unless told; `port` 4173 unless told, and the next free one if it is taken
 * @returns {Promise<{ address: string, close: () => Promise<void> }>}
 */
export async function serveApp({ host = '127.0.0.1', port = 4173 } = {}) {
  if (!existsSync(`${project}dist/index.html`)) {
    throw new Error('dist/index.html is missing: run "npm run build" first');
  }
  const server = await preview({
    configFile: `${project}vite.config.ts`,
    root: `${project}src`,
    appType: 'mpa',
    logLevel: 'error',
    preview: { host, port, strictPort: false, open: false },
  });
  const bound = server.httpServer.address();
  if (bound === null || typeof bound === 'string') throw new Error('the server has no port');
  return { address: `http://${host}:${bound.port}/`, close: () => server.close() };
}
