import { stageWords } from '#words/stage.ts';
import { viridis } from '../../mesh/rowTints.ts';
import type { TintScale } from './tintScale.ts';
import { endsOf } from './tintScale.ts';

interface Props {
  readonly scale: TintScale;
  /** Where it begins on the stage, CSS pixels from its upper edge. */
  readonly top: number;
}

const ramp = `linear-gradient(90deg, ${viridis.map((stop) => `rgb(${stop.join(' ')})`).join(', ')})`;

/** What the colours of the rows stand for, from the least to the most. */
export function TintLegend({ scale, top }: Props) {
  const [least, most] = endsOf(scale);
  return (
    <figure className="tint-legend" style={{ top }}>
      <figcaption>{stageWords.tintTitles[scale.kind]}</figcaption>
      <div className="tint-ramp" style={{ background: ramp }} />
      <div className="tint-ends">
        <span>{least}</span>
        <span>{most}</span>
      </div>
    </figure>
  );
}
