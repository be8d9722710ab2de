/** Controls of the odd end, the set and the display. */
import { appWords } from '#words/app.ts';
import { oddEndPlaceWords } from '#words/oddEndPlaces.ts';
import { panelWords } from '#words/panel.ts';
import { limits } from '../plan/limits.ts';
import type { Base, OddEnd, Plan } from '../plan/schema.ts';
import { oddEndKinds, oddEndPlaces, units } from '../plan/schema.ts';
import type { Control, Controls } from './control.ts';
import { choicesOf } from './control.ts';
import type { PlanEdits } from './usePlanEdits.ts';

const { oddEnd: oddEndWords, set: setWords, units: unitWords } = panelWords;

/** The end that makes the count odd, and on a mat or an oval where it stands. */
export function oddEndControls(oddEnd: OddEnd, on: Base['kind'], edits: PlanEdits): Controls {
  const set = (label: string, part: Partial<OddEnd>) =>
    edits.change(label, (plan) => ({ ...plan, oddEnd: { ...plan.oddEnd, ...part } }));
  const kind: Control = {
    kind: 'choice',
    label: oddEndWords.kind.label,
    word: 'oddEnd',
    value: oddEnd.kind,
    choices: choicesOf(oddEndKinds, oddEndWords.kinds[on]),
    onCommit: (word) =>
      set(oddEndWords.kind.act, { kind: oddEndKinds.find((one) => one === word) ?? oddEnd.kind }),
  };
  // where a wheel or a board has it is all the same
  const isAnywhere = on === 'wheel' || on === 'board';
  if (oddEnd.kind === 'none' || isAnywhere) return { oddEnd: kind };
  const place: Control = {
    kind: 'choice',
    label: oddEndWords.place.label,
    value: oddEnd.at,
    choices: choicesOf(oddEndPlaces, oddEndPlaceWords.names),
    onCommit: (word) =>
      set(oddEndWords.place.act, {
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
      label: setWords.stakes.label,
      word: 'set',
      share: set.stakes,
      ...limits.stakeSet,
      onCommit: (stakes) =>
        edits.change(setWords.stakes.act, (plan) => ({ ...plan, set: { stakes } }), true),
    },
  };
}

/** The unit on the screen and on paper. */
export function displayControls(display: Plan['display'], edits: PlanEdits): Controls {
  return {
    unit: {
      kind: 'choice',
      label: appWords.lengthsIn,
      value: display.unit,
      choices: choicesOf(units, unitWords.names),
      onCommit: (word) =>
        edits.change(unitWords.act, (plan) => ({
          ...plan,
          display: { unit: units.find((one) => one === word) ?? plan.display.unit },
        })),
    },
  };
}
