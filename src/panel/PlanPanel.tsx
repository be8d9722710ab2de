import { memo, useMemo, useState } from 'react';
import { panelWords as words } from '#words/panel.ts';
import { baseWords } from '#words/panelBase.ts';
import { unitWords } from '#words/units.ts';
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
import type { ChangePlan, PlanEdits } from './usePlanEdits.ts';
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
  return (
    <div className="panel">
      <Sections plan={plan} edits={edits} />
      <label className="panel-hold">
        <input type="checkbox" checked={hold} onChange={(event) => setHold(event.target.checked)} />
        <span>{words.hold}</span>
      </label>
    </div>
  );
}

interface SectionsProps {
  readonly plan: Plan;
  readonly edits: PlanEdits;
}

/** All but the girth line, which is shown elsewhere: while it is dragged, these stay as they are. */
const Sections = memo(function Sections({ plan, edits }: SectionsProps) {
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
    <>
      <Section
        title={words.base.title}
        gist={words.base.gist(words.base.kinds[base.kind], acrossText(base, unit))}
        startsOpen
      >
        <ControlList controls={controls.base} />
      </Section>
      {controls.corners && (
        <Section title={words.corners.title} gist={baseWords.corners.kinds[baseCorners(base).kind]}>
          <ControlList controls={controls.corners} />
        </Section>
      )}
      <Section title={words.oddEnd.title} gist={words.oddEnd.gist(endCount(plan))}>
        <ControlList controls={controls.oddEnd} />
      </Section>
      <Section title={words.bands.title} word="band" gist={words.bands.gist(rows)} startsOpen>
        <BandList bands={bands} unit={unit} edits={edits} />
      </Section>
      <Section title={words.set.title} gist={words.set.gist(set.stakes.toFixed(2))}>
        <ControlList controls={controls.set} />
      </Section>
      <Section title={words.handle.title} gist={words.handle.kinds[handle.kind]}>
        <ControlList controls={controls.handle} />
      </Section>
      <Section title={words.units.title} gist={unitWords.length[unit]}>
        <ControlList controls={controls.display} />
      </Section>
    </>
  );
}, showTheSame);

function showTheSame(one: SectionsProps, other: SectionsProps): boolean {
  const parts = ['base', 'bands', 'oddEnd', 'set', 'handle', 'display'] as const;
  return one.edits === other.edits && parts.every((part) => one.plan[part] === other.plan[part]);
}

function acrossText(base: Base, unit: Unit): string {
  const { length, width } = baseSize(base);
  if (isRound(base)) return words.base.across(formatLength(length, unit));
  return `${formatLength(length, unit, { withUnit: false })} × ${formatLength(width, unit)}`;
}
