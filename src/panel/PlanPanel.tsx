import { useMemo, useState } from 'react';
import { baseCorners, baseSize, isRound } from '../plan/baseSize.ts';
import { endCount, rowCount } from '../plan/counts.ts';
import type { Base, Plan, Unit } from '../plan/schema.ts';
import { formatLength } from '../plan/units.ts';
import { BandList } from './BandList.tsx';
import { baseControls } from './baseControls.ts';
import { ControlList } from './ControlList.tsx';
import { cornerControls } from './cornerControls.ts';
import { handleControls } from './handleControls.ts';
import { Section } from './Section.tsx';
import type { ChangePlan } from './usePlanEdits.ts';
import { usePlanEdits } from './usePlanEdits.ts';
import { displayControls, oddEndControls, setControls } from './wholeControls.ts';
import './panel.css';

export interface PlanPanelProps {
  readonly plan: Plan;
  readonly onChange: ChangePlan;
}

/** The plan in numbers: base, corners, odd end, bands, set, handle and units. */
export function PlanPanel({ plan, onChange }: PlanPanelProps) {
  const [hold, setHold] = useState(false);
  const edits = usePlanEdits(plan, onChange, hold);
  const { base, bands, oddEnd, set, handle, display } = plan;
  const { unit } = display;
  const rows = rowCount({ bands });
  const controls = {
    base: useMemo(() => baseControls(base, unit, edits), [base, unit, edits]),
    corners: useMemo(
      () => (base.kind === 'mat' ? cornerControls(base, rows, edits) : null),
      [base, rows, edits],
    ),
    oddEnd: useMemo(() => oddEndControls(oddEnd, base.kind, edits), [oddEnd, base.kind, edits]),
    set: useMemo(() => setControls(set, edits), [set, edits]),
    handle: useMemo(() => handleControls(handle, unit, edits), [handle, unit, edits]),
    display: useMemo(() => displayControls(display, edits), [display, edits]),
  };
  return (
    <div className="panel">
      <Section title="Base" gist={`${base.kind}, ${acrossText(base, unit)}`} startsOpen>
        <ControlList controls={controls.base} />
      </Section>
      {controls.corners && (
        <Section title="Corners" gist={baseCorners(base).kind}>
          <ControlList controls={controls.corners} />
        </Section>
      )}
      <Section title="Odd end" gist={`${endCount(plan)} ends`}>
        <ControlList controls={controls.oddEnd} />
      </Section>
      <Section title="Bands" word="band" gist={`${rows} rows`} startsOpen>
        <BandList bands={bands} unit={unit} edits={edits} />
      </Section>
      <Section title="Set" gist={`${set.stakes.toFixed(2)} of the bend stays`}>
        <ControlList controls={controls.set} />
      </Section>
      <Section title="Handle" gist={handle.kind}>
        <ControlList controls={controls.handle} />
      </Section>
      <Section title="Units" gist={unit}>
        <ControlList controls={controls.display} />
      </Section>
      <label className="panel-hold">
        <input type="checkbox" checked={hold} onChange={(event) => setHold(event.target.checked)} />
        <span>Hold the girth points where they are when the base or the rows change</span>
      </label>
    </div>
  );
}

function acrossText(base: Base, unit: Unit): string {
  const { length, width } = baseSize(base);
  if (isRound(base)) return `${formatLength(length, unit)} across`;
  return `${formatLength(length, unit, { withUnit: false })} × ${formatLength(width, unit)}`;
}
