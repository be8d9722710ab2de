import { compareChartWords } from '#words/compareCharts.ts';
import { planLetters } from '#words/planLetters.ts';
import { summaryWords } from '#words/summary.ts';
import type { Measure } from '../../model/compare/measures.ts';
import { differenceText, measureText } from '../../plan/measureText.ts';
import type { Unit } from '../../plan/schema.ts';
import '../charts.css';
import './compare.css';

export interface MeasureTableProps {
  readonly measures: readonly Measure[];
  readonly unit: Unit;
}

const { bLessA } = compareChartWords;

/** Both baskets in a few figures, and how much more or less the second has. */
export function MeasureTable({ measures, unit }: MeasureTableProps) {
  return (
    <div className="compare-measures">
      <table>
        <caption className="summary-title">{summaryWords.title}</caption>
        <thead>
          <tr>
            <td />
            <th scope="col" className="side-a">
              {planLetters.a}
            </th>
            <th scope="col" className="side-b">
              {planLetters.b}
            </th>
            <th scope="col">{bLessA}</th>
          </tr>
        </thead>
        <tbody>
          {measures.map(({ name, kind, a, b }) => (
            <tr key={name} data-measure={name}>
              <th scope="row">{name}</th>
              <td>{measureText(kind, a, unit)}</td>
              <td>{measureText(kind, b, unit)}</td>
              <td className="compare-difference">{differenceText(kind, a, b, unit)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
