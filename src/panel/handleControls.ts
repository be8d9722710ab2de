import { handleOfKind } from '../plan/handleOfKind.ts';
import { limits } from '../plan/limits.ts';
import { handleDirections, handleKinds, handleLimits } from '../plan/rim.ts';
import type { Handle, Unit } from '../plan/schema.ts';
import { strandSizes } from '../plan/strandSizes.ts';
import type { Control, Controls } from './control.ts';
import { choicesOf } from './control.ts';
import type { LengthRange } from './lengthControl.ts';
import { lengthControl } from './lengthControl.ts';
import type { PlanEdits } from './usePlanEdits.ts';

const kindText: Readonly<Record<Handle['kind'], string>> = {
  none: 'none',
  swing: 'swings in two ears',
  fixed: 'fixed, holds the width',
};

type Made = Exclude<Handle, { readonly kind: 'none' }>;

/** Kind of handle, its bow and wrap; the ears of a swinging one, the spread of a fixed one. */
export function handleControls(handle: Handle, unit: Unit, edits: PlanEdits): Controls {
  const set = (label: string, next: Handle, stepped = false) =>
    edits.change(label, (plan) => ({ ...plan, handle: next }), stepped);
  const kind: Control = {
    kind: 'choice',
    label: 'Handle',
    word: 'handle',
    value: handle.kind,
    choices: handleKinds.map((value) => ({ value, text: kindText[value] })),
    onCommit: (word) => {
      const chosen = handleKinds.find((one) => one === word) ?? handle.kind;
      return set('the kind of handle', handleOfKind(chosen, edits.plan()));
    },
  };
  if (handle.kind === 'none') return { handleKind: kind };
  const length = (label: string, mm: number, range: LengthRange, next: (mm: number) => Handle) =>
    lengthControl(label, mm, unit, range, (to, stepped) =>
      set(`the ${label.toLowerCase()}`, next(to), stepped),
    );
  const { bow } = handle;
  return {
    handleKind: kind,
    rise: length('Handle rise', handle.rise, handleLimits.rise, (rise) => ({ ...handle, rise })),
    ...spanControls(handle, set, length),
    bowWidth: length('Bow width', bow.width, limits.width, (width) => ({
      ...handle,
      bow: { ...bow, width },
    })),
    bowThickness: length('Bow thickness', bow.thickness, limits.thickness, (thickness) => ({
      ...handle,
      bow: { ...bow, thickness },
    })),
    wrapSize: wrapControl(handle, set),
    wrap: length('Wrap width', handle.wrap.width, limits.width, (width) => ({
      ...handle,
      wrap: { width },
    })),
  };
}

type SetHandle = (label: string, next: Handle, stepped?: boolean) => string | null;
type LengthOf = (
  label: string,
  mm: number,
  range: LengthRange,
  next: (mm: number) => Handle,
) => Control;

function spanControls(handle: Made, set: SetHandle, length: LengthOf): Controls {
  if (handle.kind === 'fixed') {
    return {
      across: {
        kind: 'choice',
        label: 'Goes over the',
        value: handle.across,
        choices: choicesOf(handleDirections),
        onCommit: (word) =>
          set('the way of the handle', {
            ...handle,
            across: handleDirections.find((one) => one === word) ?? handle.across,
          }),
      },
      spread: length('Handle spread', handle.spread, handleLimits.spread, (spread) => ({
        ...handle,
        spread,
      })),
    };
  }
  const { ear } = handle;
  return {
    earHeight: length('Ear height', ear.height, handleLimits.earHeight, (height) => ({
      ...handle,
      ear: { ...ear, height },
    })),
    earSpread: length('Ear spread', ear.spread, handleLimits.earSpread, (spread) => ({
      ...handle,
      ear: { ...ear, spread },
    })),
  };
}

const own = 'a size of my own';

/** The wrap is a strip of cane. */
function wrapControl(handle: Made, set: SetHandle): Control {
  const { cane } = strandSizes;
  const now = cane.find(({ width }) => Math.abs(width - handle.wrap.width) < 0.06);
  return {
    kind: 'choice',
    label: 'Wrap of cane',
    value: now?.name ?? own,
    choices: [
      ...cane.map(({ name, width }) => ({ value: name, text: `${name}, ${width} mm` })),
      { value: own, text: own },
    ],
    onCommit: (word) => {
      const size = cane.find(({ name }) => name === word);
      return size ? set('the size of the wrap', { ...handle, wrap: { width: size.width } }) : null;
    },
  };
}
