import { memo, useDeferredValue } from 'react';
import { compareChartWords } from '#words/compareCharts.ts';
import { planLetters } from '#words/planLetters.ts';
import { unitWords } from '#words/units.ts';
import type { Differences, PlaceDifference } from '../../model/compare/differences.ts';
import { gapDifference } from '../../plan/measureText.ts';
import type { Unit } from '../../plan/schema.ts';
import { formatChange, formatLength, shownChange } from '../../plan/units.ts';
import { useRowPointing } from '../useRowPointing.ts';
import '../charts.css';
import './compare.css';

export interface DifferenceTableProps {
  readonly differences: Differences;
  readonly place: number | null;
  readonly onPlace: (place: number | null) => void;
  readonly unit: Unit;
}

const { table: words } = compareChartWords;

/** Tape girths of both baskets and their difference, place by place, the rim at the top. */
export function DifferenceTable({ differences, place, onPlace, unit }: DifferenceTableProps) {
  const settled = useDeferredValue(differences);
  const { by, places, most, total } = settled;
  const { scroller, active, listeners } = useRowPointing(place, onPlace, places.length);
  const plain = (mm: number) => formatLength(mm, unit, { withUnit: false });
  const parts = by === 'row' ? 1 : total.places;
  const all = { a: total.a / parts, b: total.b / parts };
  return (
    <div className="row-table compare-table">
      <div className="row-table-head">
        <h3 className="summary-title">{words.titles[by]}</h3>
        <span className="soft">{words.note}</span>
      </div>
      <div className="row-table-scroll" ref={scroller}>
        <table>
          <caption className="field-unseen">{words.caption(unitWords.length[unit])}</caption>
          <thead>
            <tr>
              <th scope="col">{words.places[by]}</th>
              {by === 'height' && <th scope="col">{words.rowOfA}</th>}
              {by === 'height' && <th scope="col">{words.rowOfB}</th>}
              <th scope="col" className="side-a">
                {planLetters.a}
              </th>
              <th scope="col" className="side-b">
                {planLetters.b}
              </th>
              <th scope="col">{words.difference}</th>
              <th scope="col">{words.perGap}</th>
            </tr>
          </thead>
          <tbody {...listeners}>
            {places.toReversed().map((one) => (
              <DifferenceLine
                key={one.place}
                line={one}
                unit={unit}
                isPointed={one.place === place}
                isActive={one.place === active}
                isMost={one.place === most?.place}
              />
            ))}
          </tbody>
          {total.places > 0 && (
            <tfoot>
              <tr>
                <th scope="row" colSpan={by === 'height' ? 3 : 1}>
                  {by === 'row' ? words.rowsTogether(total.places) : words.meanOf(total.places)}
                </th>
                <td>{plain(all.a)}</td>
                <td>{plain(all.b)}</td>
                <td>{formatChange(shownChange(all.a, all.b, unit), unit, { withUnit: false })}</td>
                <td />
              </tr>
            </tfoot>
          )}
        </table>
      </div>
    </div>
  );
}

interface DifferenceLineProps {
  readonly line: PlaceDifference;
  readonly unit: Unit;
  readonly isPointed: boolean;
  readonly isActive: boolean;
  readonly isMost: boolean;
}

const DifferenceLine = memo(function DifferenceLine(props: DifferenceLineProps) {
  const { line, unit, isPointed, isActive, isMost } = props;
  const isByHeight = Number.isFinite(line.height);
  const plain = (mm: number) => formatLength(mm, unit, { withUnit: false });
  return (
    <tr
      data-row={line.place}
      data-most={isMost}
      tabIndex={isActive ? 0 : -1}
      className={isPointed ? 'row-pointed' : undefined}
      aria-current={isPointed ? 'true' : undefined}
    >
      <th scope="row">
        {isMost && <span className="compare-most-note">{words.mostApart} </span>}
        {isByHeight ? plain(line.height) : line.place}
      </th>
      {isByHeight && <td>{line.rowA ?? '–'}</td>}
      {isByHeight && <td>{line.rowB ?? '–'}</td>}
      <td className="row-tape">{plain(line.a)}</td>
      <td className="row-tape">{plain(line.b)}</td>
      <td className="compare-difference">
        {formatChange(shownChange(line.a, line.b, unit), unit, { withUnit: false })}
      </td>
      <td>{gapDifference(line.perGap, unit)}</td>
    </tr>
  );
});
