import { readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';

/**
 * Sizes after gzip of some scripts of the built app, in kB of 1000 bytes, and their sum.
 *
 * @param names as in `dist/assets`; one that stands twice counts once
 */
export function scriptSizes(dist: URL, names: readonly string[]): { [name: string]: number } {
  const sizes = [...new Set(names)].sort().map((name) => {
    const gzipped = gzipSync(readFileSync(new URL(`assets/${name}`, dist)), { level: 9 });
    return [name.replace(/-[\w-]{8}\.js$/, ''), gzipped.length / 1000] as const;
  });
  const all = sizes.reduce((sum, [, size]) => sum + size, 0);
  return { ...Object.fromEntries(sizes), all };
}
