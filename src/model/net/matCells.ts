import { baseGaps } from '../../plan/baseSize.ts';
import type { MatLayout } from './mat.ts';
import type { Place, PlacedEnd } from './matPlaces.ts';
import type { Net, Row } from './net.ts';

/**
 * The cells of base and wall, counter-clockwise seen from outside, with the diagonals they have when
 * unracked. Wall cells are isosceles trapezia (legs p, bases l₁ and l₂), whose diagonals are
 * √(p² + l₁·l₂) (Ptolemy); base cells are rectangles.
 */
export function matCells(
  layout: MatLayout,
  rows: readonly Row[],
): Pick<Net, 'quads' | 'diagonals' | 'cells' | 'triangles'> {
  const { plan, places, ends, crossing, edge, wall } = layout;
  const { lengthwise: a, crosswise: b, stake } = plan.base;
  const gaps = baseGaps(plan.base);
  const dx = stake.width + gaps.crosswise;
  const dy = stake.width + gaps.lengthwise;
  const quads: number[] = [];
  const diagonals: number[] = [];
  const triangles: number[] = [];
  const cells: number[] = [];
  const quad = (nodes: readonly number[], wide: number, high: number, diagonal: number) => {
    quads.push(...nodes);
    cells.push(wide, high);
    diagonals.push(diagonal);
  };

  for (let i = 0; i + 1 < a; i++) {
    for (let j = 0; j + 1 < b; j++) {
      // Seen from below, counter-clockwise is clockwise from above.
      const nodes = [
        crossing(i, j),
        crossing(i + 1, j),
        crossing(i + 1, j + 1),
        crossing(i, j + 1),
      ];
      quad(nodes, dy, dx, Math.hypot(dx, dy));
    }
  }
  const inner = ({ side, stake: index }: Place) => {
    if (side === 'south') return crossing(0, index);
    if (side === 'north') return crossing(a - 1, index);
    return side === 'east' ? crossing(index, b - 1) : crossing(index, 0);
  };
  places.forEach((place, p) => {
    const q = (p + 1) % places.length;
    const next = places[q] as Place;
    if (place.side === next.side) {
      const along = place.side === 'south' || place.side === 'north' ? dx : dy;
      const nodes = [edge(p), inner(place), inner(next), edge(q)];
      quad(nodes, stake.width / 2, along, Math.hypot(along, stake.width / 2));
    } else {
      triangles.push(edge(p), inner(place), edge(q));
    }
  });

  for (let k = 1; k < rows.length; k++) {
    const row = rows[k] as Row;
    const below = rows[k - 1] as Row;
    const step = (row.pitch + below.pitch) / 2;
    ends.forEach(({ place }, e) => {
      const f = (e + 1) % ends.length;
      const nextPlace = (ends[f] as PlacedEnd).place;
      const low = k === 1 ? [edge(place), edge(nextPlace)] : [wall(k - 1, e), wall(k - 1, f)];
      const [lowA = 0, lowB = 0] = low;
      if (lowA === lowB) {
        triangles.push(lowA, wall(k, f), wall(k, e));
        return;
      }
      const above = row.spacing[e] ?? 0;
      const under = k === 1 ? above : (below.spacing[e] ?? 0);
      const diagonal = Math.sqrt(step * step + above * under);
      quad([lowA, lowB, wall(k, f), wall(k, e)], (above + under) / 2, step, diagonal);
    });
  }
  return {
    quads: Int32Array.from(quads),
    diagonals: Float64Array.from(diagonals),
    cells: Float64Array.from(cells),
    triangles: Int32Array.from(triangles),
  };
}
