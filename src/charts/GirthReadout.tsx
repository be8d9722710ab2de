import { girthLineWords } from '#words/girthLine.ts';
import type { Unit } from '../plan/schema.ts';
import { formatChange, formatLength, shownChange } from '../plan/units.ts';

export interface GirthReadoutProps {
  readonly row: number | null;
  readonly planned: Float64Array;
  /** Tape girth of each row of the settled basket, mm; index 0 is row 1. */
  readonly tape: Float64Array;
  readonly unit: Unit;
}

const words = girthLineWords.readout;

/** The numbers of the row that is pointed at; before that, how to read the two lines. */
export function GirthReadout({ row, planned, tape, unit }: GirthReadoutProps) {
  const girth = row === null ? undefined : planned[row];
  if (row === null || girth === undefined) {
    return (
      <p className="girth-readout">
        <span className="girth-key girth-key-planned">{words.planned}</span>
        <span className="girth-key girth-key-tape">{words.tape}</span>
      </p>
    );
  }
  const before = planned[row - 1];
  const reached = tape[row - 1];
  return (
    <p className="girth-readout">
      <strong>{row === 0 ? words.base : words.row(row)}</strong>
      <span className="girth-key girth-key-planned">{formatLength(girth, unit)}</span>
      {before !== undefined && (
        <span title={words.change}>{formatChange(shownChange(before, girth, unit), unit)}</span>
      )}
      {reached !== undefined && (
        <span className="girth-key girth-key-tape">{formatLength(reached, unit)}</span>
      )}
    </p>
  );
}
