import { memo, useMemo } from 'react';
import { bandWords } from '#words/panelBands.ts';
import { weaveWords } from '#words/weaves.ts';
import { colourName } from '../form/colourName.ts';
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
  readonly edits: PlanEdits;
  /** Called when the card itself moves from one place to another, or goes. */
  readonly onOrder: (from: number, to: number | null) => void;
}

/** One band of the wall, with buttons to weave it earlier or later or not at all. */
export const BandCard = memo(function BandCard(props: BandCardProps) {
  const { band, index, count, unit, edits, onOrder } = props;
  const controls = useMemo(
    () => bandControls(band, index, unit, edits),
    [band, index, unit, edits],
  );
  const place = index + 1;
  const moveTo = (to: number, button: HTMLButtonElement) => {
    const { bands } = edits.plan();
    const moved = bands.toSpliced(index, 1).toSpliced(to, 0, band);
    if (edits.bands(bandWords.acts.order, moved) !== null) return;
    onOrder(index, to);
    requestAnimationFrame(() => focusable(button)?.focus());
  };
  const remove = () => {
    const others = edits.plan().bands.toSpliced(index, 1);
    if (edits.bands(bandWords.acts.remove(place), others) === null) onOrder(index, null);
  };
  return (
    <Section
      title={bandWords.name(place)}
      gist={bandWords.gist(band.rows, weaveWords.short[band.weave], colourName(band.colour))}
      startsOpen={count === 1}
    >
      <ControlList controls={controls} />
      <p className="panel-buttons">
        <button
          type="button"
          disabled={index === 0}
          onClick={({ currentTarget }) => moveTo(index - 1, currentTarget)}
        >
          {bandWords.earlier}
        </button>
        <button
          type="button"
          disabled={index === count - 1}
          onClick={({ currentTarget }) => moveTo(index + 1, currentTarget)}
        >
          {bandWords.later}
        </button>
        <button type="button" disabled={count === 1} onClick={remove}>
          {bandWords.remove(place)}
        </button>
      </p>
    </Section>
  );
});

/** The button, or where it is disabled now, its first neighbour that is not. */
function focusable(button: HTMLButtonElement): HTMLButtonElement | null {
  if (!button.disabled) return button;
  return button.parentElement?.querySelector<HTMLButtonElement>('button:enabled') ?? null;
}
