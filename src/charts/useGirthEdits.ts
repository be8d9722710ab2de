import { useRef } from 'react';
import { girthLineWords } from '#words/girthLine.ts';
import { addPoint, clearRow, movePoint, removePoint, setRowByHand } from '../plan/edit.ts';
import type { Plan } from '../plan/schema.ts';
import type { Handle } from './handles.ts';

const { acts } = girthLineWords;

/** Hands on a changed plan, what was done, and a key that is the same for all of one drag. */
export type ChangePlan = (plan: Plan, label: string, merge?: string) => void;

/** The edits that the girth chart offers, each told to `onChange` once and only if it changes the plan. */
export function useGirthEdits(plan: Plan, onChange: ChangePlan) {
  const told = useRef(plan);
  told.current = plan;
  const tell = (next: Plan, label: string, merge?: string) => {
    if (next === told.current) return;
    told.current = next;
    onChange(next, label, merge);
  };

  return {
    /** Moves a handle to a row and a girth, mm. */
    move(handle: Handle, row: number, girth: number, merge?: string) {
      const now = told.current;
      if (handle.kind === 'hand') {
        if (now.girthLine.rows[handle.row] === girth) return;
        tell(setRowByHand(now, handle.row, girth), acts.setRow(handle.row), merge);
        return;
      }
      const point = now.girthLine.points[handle.index];
      if (!point || (point.row === row && point.girth === girth)) return;
      tell(movePoint(now, handle.index, { row, girth }), acts.move, merge);
    },
    /** Adds a point; gives back its key among the handles, or null if there is no room for it. */
    add(row: number, girth: number): string | null {
      const next = addPoint(told.current, { row, girth });
      tell(next, acts.add);
      const index = next.girthLine.points.findIndex((point) => point.row === Math.max(1, row));
      return index < 0 ? null : `point-${index}`;
    },
    /** Takes a point away, or gives a row set by hand back to the line. */
    remove(handle: Handle) {
      if (handle.kind === 'hand') {
        tell(clearRow(told.current, handle.row), acts.clearRow(handle.row));
      } else {
        tell(removePoint(told.current, handle.index), acts.remove);
      }
    },
  };
}
