import { useState } from 'react';
import { rowCount } from '../plan/counts.ts';
import { limits } from '../plan/limits.ts';
import type { Plan, Unit } from '../plan/schema.ts';
import { BandCard } from './BandCard.tsx';
import type { PlanEdits } from './usePlanEdits.ts';

export interface BandListProps {
  readonly bands: Plan['bands'];
  readonly unit: Unit;
  readonly dyes: Readonly<Record<string, string>>;
  readonly edits: PlanEdits;
}

/** Rows of a new band. */
const newRows = 4;

/** The bands from the base up, and a button for one more. */
export function BandList({ bands, unit, dyes, edits }: BandListProps) {
  const [problem, setProblem] = useState<string | null>(null);
  const add = () => {
    const last = bands.at(-1);
    if (!last) return;
    const rows = Math.min(newRows, limits.rows.most - rowCount({ bands }));
    setProblem(
      rows < 1
        ? `Rows: at most ${limits.rows.most} in all bands; there is no room for another band`
        : edits.bands('adding a band', [...bands, { ...last, rows }]),
    );
  };
  return (
    <div className="panel-bands">
      {bands.map((band, index) => (
        <BandCard
          // A band has nothing but its place to be known by.
          // biome-ignore lint/suspicious/noArrayIndexKey: see above
          key={index}
          band={band}
          index={index}
          count={bands.length}
          unit={unit}
          dyes={dyes}
          edits={edits}
        />
      ))}
      <p className="panel-buttons">
        <button type="button" onClick={add}>
          Add a band at the rim
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
