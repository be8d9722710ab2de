import { stageWords } from '#words/stage.ts';
import type { RowTints, TintKind } from '../../mesh/rowTints.ts';
import { viridis } from '../../mesh/rowTints.ts';
import type { Unit } from '../../plan/schema.ts';
import { formatLength } from '../../plan/units.ts';

interface Props {
  readonly kind: TintKind;
  readonly tints: RowTints;
  readonly unit: Unit;
  /** Where it begins on the stage, CSS pixels from its upper edge. */
  readonly top: number;
}

const ramp = `linear-gradient(90deg, ${viridis.map((stop) => `rgb(${stop.join(' ')})`).join(', ')})`;

/** What the colours of the rows stand for, from the least to the most. */
export function TintLegend({ kind, tints: { least, most }, unit, top }: Props) {
  return (
    <figure className="tint-legend" style={{ top }}>
      <figcaption>{stageWords.tintTitles[kind]}</figcaption>
      <div className="tint-ramp" style={{ background: ramp }} />
      <div className="tint-ends">
        <span>{valueText(kind, least, unit)}</span>
        <span>{valueText(kind, most, unit)}</span>
      </div>
    </figure>
  );
}

function valueText(kind: TintKind, value: number, unit: Unit): string {
  if (kind === 'lean') return `${value.toFixed(1)}°`;
  return kind === 'gap' ? formatLength(value, unit) : `${(100 * value).toFixed(2)} %`;
}
