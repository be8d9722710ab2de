/** What can be taken hold of on the girth chart: points of the line, and rows set by hand. */
import type { Plan } from '../plan/schema.ts';
import type { ChartFrame } from './chartFrame.ts';
import { xOf, yOf } from './chartFrame.ts';

export interface Handle {
  readonly kind: 'point' | 'hand';
  /** Stays the same while the handle is dragged: the point's place in the list, or the row. */
  readonly key: string;
  /** Place among the plan's points; −1 for a row set by hand. */
  readonly index: number;
  readonly row: number;
  readonly girth: number;
  /** Rows it may be moved between; a row set by hand keeps its row. */
  readonly lowest: number;
  readonly highest: number;
}

/** All handles of a plan with `rows` rows: first the points from the base up, then the rows by hand. */
export function handlesOf(line: Plan['girthLine'], rows: number): readonly Handle[] {
  const points = line.points.map(({ row, girth }, index): Handle => {
    const lowest = (line.points[index - 1]?.row ?? 0) + 1;
    const highest = (line.points[index + 1]?.row ?? rows + 1) - 1;
    return { kind: 'point', key: `point-${index}`, index, row, girth, lowest, highest };
  });
  const byHand = Object.entries(line.rows).map(([key, girth]): Handle => {
    const row = Number(key);
    return { kind: 'hand', key: `row-${row}`, index: -1, row, girth, lowest: row, highest: row };
  });
  return [...points, ...byHand];
}

/** The handle nearest to x, y, px, no farther than `reach`; rows by hand win over a point below. */
export function handleNear(
  handles: readonly Handle[],
  frame: ChartFrame,
  x: number,
  y: number,
  reach: number,
): Handle | undefined {
  let nearest: Handle | undefined;
  let least = reach;
  for (const handle of handles) {
    const distance = Math.hypot(xOf(frame, handle.girth) - x, yOf(frame, handle.row) - y);
    if (distance <= least) {
      least = distance;
      nearest = handle;
    }
  }
  return nearest;
}

/** A row without a point: in the middle of the stretch above row `after`, or else the highest free. */
export function freeRow(
  points: readonly { readonly row: number }[],
  after: number,
  rows: number,
): number | null {
  const taken = new Set(points.map(({ row }) => row));
  const above = points.find(({ row }) => row > after)?.row ?? rows + 1;
  if (above - after > 1) return Math.floor((after + above) / 2);
  for (let row = rows; row >= 1; row--) if (!taken.has(row)) return row;
  return null;
}

/** Key, once `gone` is removed, of the handle that takes over: the point below it, or the first. */
export function keyAfterRemoval(handles: readonly Handle[], gone: Handle): string | null {
  if (gone.kind === 'hand') return handles.find(({ key }) => key !== gone.key)?.key ?? null;
  return handles.length > 1 ? `point-${Math.max(0, gone.index - 1)}` : null;
}
