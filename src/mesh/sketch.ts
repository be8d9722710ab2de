import { girthLine } from '../model/girth/girthLine.ts';
import { baseSize } from '../plan/baseSize.ts';
import { rowPitch } from '../plan/counts.ts';
import type { Plan } from '../plan/schema.ts';
import type { Thumbnail } from './thumbnailBox.ts';
import { drawnInBox } from './thumbnailBox.ts';

/**
 * The picture of a plan that has not settled yet: each row as wide in proportion to its girth as the base
 * is long, one above the other. It is close enough to tell plans apart by, and nothing is read off it.
 */
export function sketch(plan: Plan): Thumbnail {
  const girths = girthLine(plan);
  const base = girths[0] ?? 1;
  const half = Array.from(girths, (girth) => ((girth / base) * baseSize(plan.base).length) / 2);
  const heights = [0];
  for (let row = 1; row < half.length; row += 1) {
    heights.push((heights[row - 1] ?? 0) + rowPitch(plan, row));
  }
  const side = (sign: 1 | -1) => half.map((reach, row) => [sign * reach, heights[row] ?? 0]);
  const silhouette = [...side(1), ...side(-1).toReversed()].flat();
  const rows = half.map((reach, row) => {
    const height = heights[row] ?? 0;
    return { row, line: [-reach, height, reach, height] };
  });
  const widest = Math.max(...half);
  const size = { left: -widest, right: widest, bottom: 0, width: 2 * widest };
  return drawnInBox({ silhouette, rows, ...size, height: heights.at(-1) ?? 0 });
}
