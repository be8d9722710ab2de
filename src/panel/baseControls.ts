import { baseWords } from '#words/panelBase.ts';
import { strandWords } from '#words/panelStrands.ts';
import { baseKinds } from '../plan/base.ts';
import { baseOfKind } from '../plan/baseOfKind.ts';
import { upsetts } from '../plan/baseParts.ts';
import { baseSize } from '../plan/baseSize.ts';
import { limits } from '../plan/limits.ts';
import type { Base, Unit } from '../plan/schema.ts';
import { boardControls } from './boardControls.ts';
import type { Control, Controls } from './control.ts';
import { choicesOf } from './control.ts';
import { matControls } from './matControls.ts';
import { ovalControls } from './ovalControls.ts';
import { strandControls } from './strandControls.ts';
import type { PlanEdits } from './usePlanEdits.ts';
import { wheelControls } from './wheelControls.ts';

/** Kind of base, what that kind has of its own, the stake, the upsett and the centre lift. */
export function baseControls(base: Base, unit: Unit, edits: PlanEdits): Controls {
  const kind: Control = {
    kind: 'choice',
    label: baseWords.kind.label,
    value: base.kind,
    choices: choicesOf(baseKinds, baseWords.kinds),
    onCommit: (word) => {
      const chosen = baseKinds.find((one) => one === word) ?? base.kind;
      return edits.base(baseWords.kind.act, baseOfKind(chosen, base));
    },
  };
  const name = base.kind === 'wheel' ? 'spoke' : 'stake';
  const upsett: Control = {
    kind: 'choice',
    label: baseWords.upsett.label,
    word: 'upsett',
    value: base.upsett,
    choices: choicesOf(upsetts, baseWords.upsetts),
    onCommit: (word) =>
      edits.base(baseWords.upsett.act, {
        ...base,
        upsett: upsetts.find((one) => one === word) ?? base.upsett,
      }),
  };
  return {
    baseKind: kind,
    ...ownControls(base, unit, edits),
    ...strandControls(name, base.stake, unit, (part, stake, stepped) =>
      edits.base(strandWords.acts[name][part], { ...base, stake }, stepped),
    ),
    upsett,
    ...liftControls(base, unit, edits),
  };
}

function ownControls(base: Base, unit: Unit, edits: PlanEdits): Controls {
  switch (base.kind) {
    case 'mat':
      return matControls(base, unit, edits);
    case 'wheel':
      return wheelControls(base, unit, edits);
    case 'oval':
      return ovalControls(base, unit, edits);
    case 'board':
      return boardControls(base, unit, edits);
  }
}

/** A board is not pushed in. */
function liftControls(base: Base, unit: Unit, edits: PlanEdits): Controls {
  if (base.kind === 'board') return {};
  const { length, width } = baseSize(base);
  const { least, most, mostShare } = limits.centreLift;
  return {
    centreLift: {
      kind: 'length',
      label: baseWords.centreLift.label,
      word: 'lift',
      mm: base.centreLift,
      unit,
      least,
      most: Math.min(most, mostShare * Math.min(length, width)),
      onCommit: (centreLift, stepped) =>
        edits.base(baseWords.centreLift.act, { ...base, centreLift }, stepped),
    },
  };
}
