/** Controls of the odd end, the set and the display. */
import { limits } from '../plan/limits.ts';
import type { Base, OddEnd, Plan, Unit } from '../plan/schema.ts';
import { oddEndKinds, oddEndPlaces, units } from '../plan/schema.ts';
import type { Control, Controls } from './control.ts';
import { choicesOf } from './control.ts';
import type { PlanEdits } from './usePlanEdits.ts';

/** What an odd end is called on each base; where a wheel or a board has it is all the same. */
const oddEndText: Readonly<Record<Base['kind'], Readonly<Record<OddEnd['kind'], string>>>> = {
  mat: { split: 'one stake split', added: 'one end added', none: 'none' },
  oval: { split: 'one stake split', added: 'one end added', none: 'none' },
  wheel: { split: 'one spoke split', added: 'half a spoke added', none: 'none' },
  board: { split: 'one stake split', added: 'one stake added', none: 'none' },
};

const unitText: Readonly<Record<Unit, string>> = {
  in: 'inches, to 1/16',
  cm: 'centimetres',
  mm: 'millimetres',
};

/** The end that makes the count odd, and on a mat or an oval where it stands. */
export function oddEndControls(oddEnd: OddEnd, on: Base['kind'], edits: PlanEdits): Controls {
  const set = (label: string, part: Partial<OddEnd>) =>
    edits.change(label, (plan) => ({ ...plan, oddEnd: { ...plan.oddEnd, ...part } }));
  const kind: Control = {
    kind: 'choice',
    label: 'Odd end',
    word: 'odd end',
    value: oddEnd.kind,
    choices: oddEndKinds.map((value) => ({ value, text: oddEndText[on][value] })),
    onCommit: (word) =>
      set('the odd end', { kind: oddEndKinds.find((one) => one === word) ?? oddEnd.kind }),
  };
  const isAnywhere = on === 'wheel' || on === 'board';
  if (oddEnd.kind === 'none' || isAnywhere) return { oddEnd: kind };
  const place: Control = {
    kind: 'choice',
    label: 'Where it stands',
    value: oddEnd.at,
    choices: choicesOf(oddEndPlaces),
    onCommit: (word) =>
      set('the place of the odd end', {
        at: oddEndPlaces.find((one) => one === word) ?? oddEnd.at,
      }),
  };
  return { oddEnd: kind, place };
}

/** How much of a stake's bend stays in it. */
export function setControls(set: Plan['set'], edits: PlanEdits): Controls {
  return {
    stakes: {
      kind: 'share',
      label: 'Stake set',
      word: 'set',
      share: set.stakes,
      ...limits.stakeSet,
      onCommit: (stakes) =>
        edits.change('the stake set', (plan) => ({ ...plan, set: { stakes } }), true),
    },
  };
}

/** The unit on the screen and on paper. */
export function displayControls(display: Plan['display'], edits: PlanEdits): Controls {
  return {
    unit: {
      kind: 'choice',
      label: 'Lengths in',
      value: display.unit,
      choices: units.map((value) => ({ value, text: unitText[value] })),
      onCommit: (word) =>
        edits.change('the unit', (plan) => ({
          ...plan,
          display: { unit: units.find((one) => one === word) ?? plan.display.unit },
        })),
    },
  };
}
