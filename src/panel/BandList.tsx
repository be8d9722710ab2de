import { useCallback, useState } from 'react';
import { bandWords } from '#words/panelBands.ts';
import { rowCount } from '../plan/counts.ts';
import { limits } from '../plan/limits.ts';
import type { Plan, Unit } from '../plan/schema.ts';
import { BandCard } from './BandCard.tsx';
import type { PlanEdits } from './usePlanEdits.ts';

export interface BandListProps {
  readonly bands: Plan['bands'];
  readonly unit: Unit;
  readonly edits: PlanEdits;
}

/** Rows of a new band. */
const newRows = 4;

/** The bands from the base up, and a button for one more. */
export function BandList({ bands, unit, edits }: BandListProps) {
  const [problem, setProblem] = useState<string | null>(null);
  const [names, setNames] = useState<readonly number[]>([]);
  if (names.length !== bands.length) setNames(namesFor(names, bands.length));
  const order = useCallback((from: number, to: number | null) => {
    setNames((now) => {
      const others = now.toSpliced(from, 1);
      return to === null ? others : others.toSpliced(to, 0, now[from] ?? -1);
    });
  }, []);
  const add = () => {
    const last = bands.at(-1);
    if (!last) return;
    const rows = Math.min(newRows, limits.rows.most - rowCount({ bands }));
    setProblem(
      rows < 1
        ? bandWords.noRoom(limits.rows.most)
        : edits.bands(bandWords.acts.add, [...bands, { ...last, rows }]),
    );
  };
  return (
    <div className="panel-bands">
      {bands.map((band, index) => (
        <BandCard
          key={names[index] ?? -index - 1}
          band={band}
          index={index}
          count={bands.length}
          unit={unit}
          edits={edits}
          onOrder={order}
        />
      ))}
      <p className="panel-buttons">
        <button type="button" onClick={add}>
          {bandWords.add}
        </button>
      </p>
      {problem && (
        <p className="field-problem" role="status">
          {problem}
        </p>
      )}
    </div>
  );
}

/** A number of its own for each of `count` cards; a card keeps its number when the order changes. */
function namesFor(names: readonly number[], count: number): readonly number[] {
  const free = Math.max(-1, ...names) + 1;
  return Array.from({ length: count }, (_, index) => names[index] ?? free + index);
}
