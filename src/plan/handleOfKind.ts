import { baseSize } from './baseSize.ts';
import { handleLimits } from './rim.ts';
import type { Handle, Plan } from './schema.ts';

/** A handle that nothing is known of yet. Common practice, no source. */
const usual = {
  rise: 150,
  bow: { width: 15.9, thickness: 3.2 },
  wrap: { width: 4 },
} as const;
const usualEar = { height: 95, spread: 28 } as const;

/**
 * A handle of kind `kind` in the place of the plan's own, whose bow and wrap it keeps. A fixed one goes over
 * the width of the basket and holds it as wide as the base.
 */
export function handleOfKind(kind: Handle['kind'], { handle, base }: Plan): Handle {
  if (handle.kind === kind) return handle;
  if (kind === 'none') return { kind };
  const { rise, bow, wrap } = handle.kind === 'none' ? usual : handle;
  const ear = handle.kind === 'none' ? undefined : handle.ear;
  if (kind === 'swing') return { kind, rise, bow, wrap, ear: ear ?? usualEar };
  const { least, most } = handleLimits.spread;
  const spread = Math.min(most, Math.max(least, baseSize(base).width));
  return { kind, rise, bow, wrap, across: 'width', spread };
}
