/** Base and wall as triangles. (`!`: typed arrays in a hot loop.) */
import type { Net } from '../net/net.ts';

/**
 * The net's cells as triangles, three nodes each, counter-clockwise seen from outside (below the
 * base). Four-sided cells are cut along the diagonal from their first node to their third.
 */
export function surfaceTriangles({ quads, triangles }: Net): Int32Array {
  const all = new Int32Array((quads.length / 4) * 6 + triangles.length);
  let at = 0;
  for (let i = 0; i < quads.length; i += 4) {
    const [a, b, c, d] = [quads[i]!, quads[i + 1]!, quads[i + 2]!, quads[i + 3]!];
    all[at] = a;
    all[at + 1] = b;
    all[at + 2] = c;
    all[at + 3] = a;
    all[at + 4] = c;
    all[at + 5] = d;
    at += 6;
  }
  all.set(triangles, at);
  return all;
}
