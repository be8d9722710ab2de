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

const kindText: Readonly<Record<Base['kind'], string>> = {
  mat: 'mat of crossed stakes',
  wheel: 'wheel of spokes',
  oval: 'oval, rounded ends',
  board: 'board with a slot',
};

/** Kind of base, what that kind has of its own, the stake, the upsett and the centre lift. */
export function baseControls(base: Base, unit: Unit, edits: PlanEdits): Controls {
  const kind: Control = {
    kind: 'choice',
    label: 'Kind of base',
    value: base.kind,
    choices: baseKinds.map((value) => ({ value, text: kindText[value] })),
    onCommit: (word) => {
      const chosen = baseKinds.find((one) => one === word) ?? base.kind;
      return edits.base('the kind of base', baseOfKind(chosen, base));
    },
  };
  const name = base.kind === 'wheel' ? 'Spoke' : 'Stake';
  const upsett: Control = {
    kind: 'choice',
    label: 'Upsett',
    word: 'upsett',
    value: base.upsett,
    choices: choicesOf(upsetts),
    onCommit: (word) =>
      edits.base('the upsett', {
        ...base,
        upsett: upsetts.find((one) => one === word) ?? base.upsett,
      }),
  };
  return {
    baseKind: kind,
    ...ownControls(base, unit, edits),
    ...strandControls(name, base.stake, unit, (label, stake, stepped) =>
      edits.base(label, { ...base, stake }, stepped),
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
      label: 'Centre lift',
      word: 'lift',
      mm: base.centreLift,
      unit,
      least,
      most: Math.min(most, mostShare * Math.min(length, width)),
      onCommit: (centreLift, stepped) =>
        edits.base('the centre lift', { ...base, centreLift }, stepped),
    },
  };
}
