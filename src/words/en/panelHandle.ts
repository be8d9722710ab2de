import type { Handle } from '../../plan/schema.ts';

/** Controls of the handle in the plan panel: each has a label, and an `act` that can be undone. */
export const handleWords = {
  kind: { label: 'Handle', act: 'the kind of handle' },
  kinds: {
    none: 'none',
    swing: 'swings in two ears',
    fixed: 'fixed, holds the width',
  } satisfies Readonly<Record<Handle['kind'], string>>,
  rise: { label: 'Handle rise', act: 'the handle rise' },
  bowWidth: { label: 'Bow width', act: 'the bow width' },
  bowThickness: { label: 'Bow thickness', act: 'the bow thickness' },
  wrapSize: { label: 'Wrap of cane', act: 'the size of the wrap' },
  wrapWidth: { label: 'Wrap width', act: 'the wrap width' },
  /** The choices go on with the label. */
  across: { label: 'Goes over the', act: 'the way of the handle' },
  directions: {
    length: 'length',
    width: 'width',
  } satisfies Readonly<Record<Extract<Handle, { readonly across: string }>['across'], string>>,
  spread: { label: 'Handle spread', act: 'the handle spread' },
  earHeight: { label: 'Ear height', act: 'the ear height' },
  earSpread: { label: 'Ear spread', act: 'the ear spread' },
};
