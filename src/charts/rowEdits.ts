/** What the row chart does to the plan. */
import { girthLineWords } from '#words/girthLine.ts';
import { clearRow, setRowByHand } from '../plan/edit.ts';
import type { Plan } from '../plan/schema.ts';
import type { ChangePlan } from './useGirthEdits.ts';

const { acts } = girthLineWords;

/** Edits of single rows. Girths in mm. */
export interface RowEdits {
  readonly set: (row: number, girth: number, merge?: string) => void;
  readonly clear: (row: number) => void;
  /** The girth that a row is set to by hand at this moment; undefined where it follows the line. */
  readonly byHand: (row: number) => number | undefined;
}

/** Edits of the plan that `now` tells of when they are made: it may be newer than the chart that is drawn. */
export function rowEdits(
  now: () => { readonly present: () => Plan; readonly onChange: ChangePlan },
): RowEdits {
  return {
    set(row, girth, merge) {
      const { present, onChange } = now();
      onChange(setRowByHand(present(), row, girth), acts.setRow(row), merge);
    },
    clear(row) {
      const { present, onChange } = now();
      onChange(clearRow(present(), row), acts.clearRow(row));
    },
    byHand: (row) => now().present().girthLine.rows[row],
  };
}
