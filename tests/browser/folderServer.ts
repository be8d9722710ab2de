/** A plain server of files that can be stopped and started again, as one in a village hall is. */
import { readFile } from 'node:fs/promises';
import type { Server } from 'node:http';
import { createServer } from 'node:http';
import { extname, join, normalize } from 'node:path';

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.ttf': 'font/ttf',
  '.webmanifest': 'application/manifest+json',
};

export interface FolderServer {
  /** With a closing slash; the same after every start. */
  readonly address: string;
  start(): Promise<void>;
  /** Cuts every connection and takes no more. */
  close(): Promise<void>;
}

/**
 * Serves the files of `folder` under `under`, and no header but their type and that they are to be asked
 * for anew.
 *
 * @param under path on the server, as `/class/girthline/`
 */
export async function folderServer(folder: string, under: string): Promise<FolderServer> {
  let server: Server | null = null;
  let port = 0;
  const start = async () => {
    server = createServer(async ({ url = '/' }, response) => {
      const path = decodeURIComponent(new URL(url, 'http://127.0.0.1').pathname);
      const file = path.startsWith(under)
        ? normalize(path.slice(under.length) || 'index.html')
        : '';
      try {
        if (!file || file.startsWith('..')) throw new Error('not of this folder');
        const content = await readFile(join(folder, file));
        response.writeHead(200, {
          'content-type': types[extname(file)] ?? 'application/octet-stream',
          'cache-control': 'no-cache',
        });
        response.end(content);
      } catch {
        response.writeHead(404).end();
      }
    });
    await new Promise<void>((listening) => server?.listen(port, '127.0.0.1', listening));
    const bound = server.address();
    if (bound === null || typeof bound === 'string') throw new Error('the server has no port');
    port = bound.port;
  };
  await start();
  return {
    address: `http://127.0.0.1:${port}${under}`,
    start,
    close: async () => {
      const stopping = server;
      server = null;
      stopping?.closeAllConnections();
      await new Promise((closed) => (stopping ? stopping.close(closed) : closed(null)));
    },
  };
}
