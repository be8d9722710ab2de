import { compareChartWords } from '#words/compareCharts.ts';
import { planLetters } from '#words/planLetters.ts';
import type { PlaceDifference } from '../../model/compare/differences.ts';
import type { Unit } from '../../plan/schema.ts';
import { formatChange, formatLength, shownChange } from '../../plan/units.ts';
import { PlanSign } from './PlanSign.tsx';

export interface CompareReadoutProps {
  /** The place pointed at, or null. */
  readonly place: PlaceDifference | null;
  readonly hasBlend: boolean;
  /** What the lines show. */
  readonly lines: 'planned' | 'tape';
  readonly unit: Unit;
}

const { readout: words, bLessA } = compareChartWords;

/** Tape girths of the place pointed at; before that, which line is which. */
export function CompareReadout({ place, hasBlend, lines, unit }: CompareReadoutProps) {
  if (!place) {
    return (
      <p className="girth-readout compare-readout">
        <PlanSign side="a" />
        <PlanSign side="b" />
        {hasBlend && (
          <span>
            <PlanSign side="blend" /> {words.blend}
          </span>
        )}
        <span className="soft">{words.lines[lines]}</span>
      </p>
    );
  }
  return (
    <p className="girth-readout compare-readout">
      <strong>{placeName(place, unit)}</strong>
      <span className="soft">{words.tape}</span>
      <span className="side-a">{words.ofPlan(planLetters.a, formatLength(place.a, unit))}</span>
      <span className="side-b">{words.ofPlan(planLetters.b, formatLength(place.b, unit))}</span>
      <strong title={bLessA}>{formatChange(shownChange(place.a, place.b, unit), unit)}</strong>
    </p>
  );
}

/** `Row 18`, or the height over the table. */
function placeName({ place, height }: PlaceDifference, unit: Unit): string {
  return Number.isFinite(height) ? words.height(formatLength(height, unit)) : words.row(place);
}
