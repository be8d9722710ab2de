import type { PlaceDifference } from '../../model/compare/differences.ts';
import type { Unit } from '../../plan/schema.ts';
import { formatChange, formatLength } from '../../plan/units.ts';
import { PlanSign } from './PlanSign.tsx';

export interface CompareReadoutProps {
  /** The place pointed at, or null. */
  readonly place: PlaceDifference | null;
  readonly hasBlend: boolean;
  /** What the lines show. */
  readonly lines: 'planned girth' | 'tape girth';
  readonly unit: Unit;
}

/** Tape girths of the place pointed at; before that, which line is which. */
export function CompareReadout({ place, hasBlend, lines, unit }: CompareReadoutProps) {
  if (!place) {
    return (
      <p className="girth-readout compare-readout">
        <PlanSign side="a" />
        <PlanSign side="b" />
        {hasBlend && (
          <span>
            <PlanSign side="blend" /> blend
          </span>
        )}
        <span className="soft">{lines}</span>
      </p>
    );
  }
  return (
    <p className="girth-readout compare-readout">
      <strong>{placeName(place, unit)}</strong>
      <span className="soft">tape</span>
      <span className="side-a">A {formatLength(place.a, unit)}</span>
      <span className="side-b">B {formatLength(place.b, unit)}</span>
      <strong title="B less A">{formatChange(place.difference, unit)}</strong>
    </p>
  );
}

/** `Row 18`, or the height over the table. */
function placeName({ place, height }: PlaceDifference, unit: Unit): string {
  return Number.isFinite(height) ? `At ${formatLength(height, unit)}` : `Row ${place}`;
}
