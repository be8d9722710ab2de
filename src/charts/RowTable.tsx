import { useDeferredValue, useEffect, useMemo, useRef, useState } from 'react';
import { WordHelp } from '../form/WordHelp.tsx';
import type { Basket } from '../model/basket.ts';
import { clearRow, setRowByHand } from '../plan/edit.ts';
import type { Plan } from '../plan/schema.ts';
import { RowLine } from './RowLine.tsx';
import { tableRows } from './tableRows.ts';
import type { ChangePlan } from './useGirthEdits.ts';
import { useRowPointing } from './useRowPointing.ts';
import './charts.css';

export interface RowTableProps {
  readonly plan: Plan;
  /** Planned girth by row, mm, from `girthLine(plan)`; index 0 is the base. */
  readonly girths: Float64Array;
  readonly basket: Pick<Basket, 'rows' | 'findings'> | null;
  readonly row: number | null;
  readonly onRow: (row: number | null) => void;
  readonly onChange: ChangePlan;
  /** Saves the chart as a file; left out where it cannot be saved yet. */
  readonly onSave?: (() => void) | undefined;
}

/** The chart to weave against: one line a row, the last row at the top as on the basket. */
export function RowTable(props: RowTableProps) {
  const { plan, girths, basket, row, onRow, onChange, onSave } = props;
  const { unit } = plan.display;
  const [isRimFirst, setRimFirst] = useState(true);
  const settled = useDeferredValue(basket);
  const rows = useMemo(() => tableRows(plan, girths, settled), [plan, girths, settled]);
  const ordered = isRimFirst ? rows.toReversed() : rows;
  const { scroller, active, listeners } = useRowPointing(row, onRow, rows.length);

  const latest = useRef({ plan, onChange });
  useEffect(() => {
    latest.current = { plan, onChange };
  });
  const [edits] = useState(() => ({
    set(at: number, girth: number, merge?: string) {
      const { plan: now, onChange: tell } = latest.current;
      tell(setRowByHand(now, at, girth), `setting row ${at} by hand`, merge);
    },
    clear(at: number) {
      const { plan: now, onChange: tell } = latest.current;
      tell(clearRow(now, at), `giving row ${at} back to the line`);
    },
  }));

  return (
    <div className="row-table">
      <div className="row-table-head">
        <h3 className="summary-title">Row chart</h3>
        <WordHelp word="tapeGirth" />
        <button
          type="button"
          className="girth-button"
          onClick={() => setRimFirst((before) => !before)}
        >
          {isRimFirst ? 'Put the base at the top' : 'Put the rim at the top'}
        </button>
        <button type="button" className="girth-button" disabled={!onSave} onClick={onSave}>
          Save chart (CSV)
        </button>
      </div>
      <div className="row-table-scroll" ref={scroller}>
        <table>
          <caption className="field-unseen">
            Row chart, lengths in {unit}. Arrow keys go from row to row.
          </caption>
          <thead>
            <tr>
              <th scope="col">Row</th>
              <th scope="col">Tape girth</th>
              <th scope="col">Change</th>
              <th scope="col">per gap</th>
              <th scope="col">Length × width</th>
              <th scope="col">Height</th>
              <th scope="col">Lean</th>
              <th scope="col">Planned, mid‑wall</th>
              <th scope="col">Band</th>
            </tr>
          </thead>
          <tbody {...listeners}>
            {ordered.map((line) => (
              <RowLine
                key={line.row}
                line={line}
                unit={unit}
                isPointed={line.row === row}
                isActive={line.row === active}
                edits={edits}
              />
            ))}
          </tbody>
        </table>
      </div>
    </div>
  );
}
