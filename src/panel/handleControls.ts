import { handleWords as words } from '#words/panelHandle.ts';
import { strandWords } from '#words/panelStrands.ts';
import { handleOfKind } from '../plan/handleOfKind.ts';
import { limits } from '../plan/limits.ts';
import { handleDirections, handleKinds, handleLimits } from '../plan/rim.ts';
import type { Handle, Unit } from '../plan/schema.ts';
import { strandSizes } from '../plan/strandSizes.ts';
import type { Control, Controls, ControlWords } from './control.ts';
import { choicesOf } from './control.ts';
import type { LengthRange } from './lengthControl.ts';
import { lengthControl } from './lengthControl.ts';
import type { PlanEdits } from './usePlanEdits.ts';

type Made = Exclude<Handle, { readonly kind: 'none' }>;

/** Kind of handle, its bow and wrap; the ears of a swinging one, the spread of a fixed one. */
export function handleControls(handle: Handle, unit: Unit, edits: PlanEdits): Controls {
  const set = (label: string, next: Handle, stepped = false) =>
    edits.change(label, (plan) => ({ ...plan, handle: next }), stepped);
  const kind: Control = {
    kind: 'choice',
    label: words.kind.label,
    word: 'handle',
    value: handle.kind,
    choices: choicesOf(handleKinds, words.kinds),
    onCommit: (word) => {
      const chosen = handleKinds.find((one) => one === word) ?? handle.kind;
      return set(words.kind.act, handleOfKind(chosen, edits.plan()));
    },
  };
  if (handle.kind === 'none') return { handleKind: kind };
  const length: LengthOf = ({ label, act }, mm, range, next) =>
    lengthControl(label, mm, unit, range, (to, stepped) => set(act, next(to), stepped));
  const { bow } = handle;
  return {
    handleKind: kind,
    rise: length(words.rise, handle.rise, handleLimits.rise, (rise) => ({ ...handle, rise })),
    ...spanControls(handle, set, length),
    bowWidth: length(words.bowWidth, bow.width, limits.width, (width) => ({
      ...handle,
      bow: { ...bow, width },
    })),
    bowThickness: length(words.bowThickness, bow.thickness, limits.thickness, (thickness) => ({
      ...handle,
      bow: { ...bow, thickness },
    })),
    wrapSize: wrapControl(handle, set),
    wrap: length(words.wrapWidth, handle.wrap.width, limits.width, (width) => ({
      ...handle,
      wrap: { width },
    })),
  };
}

type SetHandle = (label: string, next: Handle, stepped?: boolean) => string | null;
type LengthOf = (
  words: ControlWords,
  mm: number,
  range: LengthRange,
  next: (mm: number) => Handle,
) => Control;

function spanControls(handle: Made, set: SetHandle, length: LengthOf): Controls {
  if (handle.kind === 'fixed') {
    return {
      across: {
        kind: 'choice',
        label: words.across.label,
        value: handle.across,
        choices: choicesOf(handleDirections, words.directions),
        onCommit: (word) =>
          set(words.across.act, {
            ...handle,
            across: handleDirections.find((one) => one === word) ?? handle.across,
          }),
      },
      spread: length(words.spread, handle.spread, handleLimits.spread, (spread) => ({
        ...handle,
        spread,
      })),
    };
  }
  const { ear } = handle;
  return {
    earHeight: length(words.earHeight, ear.height, handleLimits.earHeight, (height) => ({
      ...handle,
      ear: { ...ear, height },
    })),
    earSpread: length(words.earSpread, ear.spread, handleLimits.earSpread, (spread) => ({
      ...handle,
      ear: { ...ear, spread },
    })),
  };
}

const { ownSize: own, caneSize } = strandWords;

/** The wrap is a strip of cane. */
function wrapControl(handle: Made, set: SetHandle): Control {
  const { cane } = strandSizes;
  const now = cane.find(({ width }) => Math.abs(width - handle.wrap.width) < 0.06);
  return {
    kind: 'choice',
    label: words.wrapSize.label,
    value: now?.name ?? own,
    choices: [
      ...cane.map(({ name, width }) => ({ value: name, text: caneSize(name, `${width}`) })),
      { value: own, text: own },
    ],
    onCommit: (word) => {
      const size = cane.find(({ name }) => name === word);
      return size ? set(words.wrapSize.act, { ...handle, wrap: { width: size.width } }) : null;
    },
  };
}
