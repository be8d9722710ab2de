import { memo, useMemo } from 'react';
import type { Band, Unit } from '../plan/schema.ts';
import { bandControls } from './bandControls.ts';
import { ControlList } from './ControlList.tsx';
import { Section } from './Section.tsx';
import type { PlanEdits } from './usePlanEdits.ts';

export interface BandCardProps {
  readonly band: Band;
  readonly index: number;
  readonly count: number;
  readonly unit: Unit;
  readonly dyes: Readonly<Record<string, string>>;
  readonly edits: PlanEdits;
}

/** One band of the wall, with buttons to weave it earlier or later or not at all. */
export const BandCard = memo(function BandCard(props: BandCardProps) {
  const { band, index, count, unit, dyes, edits } = props;
  const controls = useMemo(
    () => bandControls(band, index, unit, edits, dyes),
    [band, index, unit, edits, dyes],
  );
  const name = `Band ${index + 1}`;
  const moveTo = (to: number) => {
    const { bands } = edits.plan();
    const moved = bands.toSpliced(index, 1).toSpliced(to, 0, band);
    edits.bands(`the order of the bands`, moved);
  };
  const remove = () => edits.bands(`taking ${name} away`, edits.plan().bands.toSpliced(index, 1));
  return (
    <Section
      title={name}
      gist={`${band.rows} rows, ${band.weave}, ${band.colour}`}
      startsOpen={count === 1}
    >
      <ControlList controls={controls} />
      <p className="panel-buttons">
        <button type="button" disabled={index === 0} onClick={() => moveTo(index - 1)}>
          Earlier
        </button>
        <button type="button" disabled={index === count - 1} onClick={() => moveTo(index + 1)}>
          Later
        </button>
        <button type="button" disabled={count === 1} onClick={remove}>
          Remove {name.toLowerCase()}
        </button>
      </p>
    </Section>
  );
});
