import { memo, useEffect, useMemo, useRef, useState } from 'react';
import { rowTableWords as words } from '#words/rowTable.ts';
import { unitWords } from '#words/units.ts';
import { WordHelp } from '../form/WordHelp.tsx';
import type { Basket } from '../model/basket.ts';
import type { Plan } from '../plan/schema.ts';
import { RowLine } from './RowLine.tsx';
import { rowEdits } from './rowEdits.ts';
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
  /** The plan at the moment of an edit, where it may be newer than `plan`. */
  readonly present?: () => Plan;
  /** Saves the chart as a file; left out where it cannot be saved yet. */
  readonly onSave?: (() => void) | undefined;
}

const { headings } = words;

/** The chart to weave against: one line a row, the last row at the top as on the basket. */
export const RowTable = memo(function RowTable(props: RowTableProps) {
  const { plan, girths, basket, row, onRow, onChange, present = () => plan, onSave } = props;
  const { unit } = plan.display;
  const [isRimFirst, setRimFirst] = useState(true);
  const rows = useMemo(() => tableRows(plan, girths, basket), [plan, girths, basket]);
  const ordered = isRimFirst ? rows.toReversed() : rows;
  const { scroller, active, listeners } = useRowPointing(row, onRow, rows.length);

  const latest = useRef({ present, onChange });
  useEffect(() => {
    latest.current = { present, onChange };
  });
  const [edits] = useState(() => rowEdits(() => latest.current));

  return (
    <div className="row-table">
      <div className="row-table-head">
        <h3 className="summary-title">{words.title}</h3>
        <WordHelp word="tapeGirth" />
        <button
          type="button"
          className="girth-button"
          onClick={() => setRimFirst((before) => !before)}
        >
          {isRimFirst ? words.baseFirst : words.rimFirst}
        </button>
        <button type="button" className="girth-button" disabled={!onSave} onClick={onSave}>
          {words.save}
        </button>
      </div>
      <div className="row-table-scroll" ref={scroller}>
        <table>
          <caption className="field-unseen">{words.caption(unitWords.length[unit])}</caption>
          <thead>
            <tr>
              <th scope="col">{headings.row}</th>
              <th scope="col">{headings.tape}</th>
              <th scope="col">{headings.change}</th>
              <th scope="col">{headings.perGap}</th>
              <th scope="col">{headings.size}</th>
              <th scope="col">{headings.height}</th>
              <th scope="col">{headings.lean}</th>
              <th scope="col">{headings.planned}</th>
              <th scope="col">{headings.band}</th>
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
});
