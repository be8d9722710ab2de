import { readdirSync, readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';

/** Sizes after gzip of the built app's scripts, in kB of 1000 bytes, and their sum. */
export function scriptSizes(dist: URL): { readonly [name: string]: number } {
  const sizes = readdirSync(new URL('assets/', dist))
    .filter((name) => name.endsWith('.js'))
    .sort()
    .map((name) => {
      const gzipped = gzipSync(readFileSync(new URL(`assets/${name}`, dist)), { level: 9 });
      return [name.replace(/-[\w-]{8}\.js$/, ''), gzipped.length / 1000] as const;
    });
  const all = sizes.reduce((sum, [, size]) => sum + size, 0);
  return { ...Object.fromEntries(sizes), all };
}
