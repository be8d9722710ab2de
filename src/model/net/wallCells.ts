import type { Layout } from './basketNet.ts';
import type { Net, Row } from './net.ts';

/**
 * The cells of base and wall, counter-clockwise seen from outside, with the diagonals they have when
 * unracked. Wall cells are isosceles trapezia (legs p, bases l₁ and l₂), whose diagonals are
 * √(p² + l₁·l₂) (Ptolemy); base cells are taken as rectangles.
 */
export function wallCells(
  { base, ends, edge, wall }: Layout,
  rows: readonly Row[],
): Pick<Net, 'quads' | 'diagonals' | 'cells' | 'triangles'> {
  const quads = base.cells.flatMap(({ nodes }) => [...nodes]);
  const cells = base.cells.flatMap(({ wide, high }) => [wide, high]);
  const diagonals = base.cells.map(({ wide, high }) => Math.hypot(wide, high));
  const triangles = base.triangles.flatMap((nodes) => [...nodes]);
  for (let k = 1; k < rows.length; k++) {
    const row = rows[k]!;
    const below = rows[k - 1]!;
    const step = (row.pitch + below.pitch) / 2;
    for (let e = 0; e < ends.length; e++) {
      const f = e + 1 < ends.length ? e + 1 : 0;
      const lowA = k === 1 ? edge(ends[e]!.place) : wall(k - 1, e);
      const lowB = k === 1 ? edge(ends[f]!.place) : wall(k - 1, f);
      if (lowA === lowB) {
        triangles.push(lowA, wall(k, f), wall(k, e));
        continue;
      }
      const above = row.spacing[e]!;
      const under = k === 1 ? above : below.spacing[e]!;
      quads.push(lowA, lowB, wall(k, f), wall(k, e));
      cells.push((above + under) / 2, step);
      diagonals.push(Math.sqrt(step * step + above * under));
    }
  }
  return {
    quads: Int32Array.from(quads),
    diagonals: Float64Array.from(diagonals),
    cells: Float64Array.from(cells),
    triangles: Int32Array.from(triangles),
  };
}
