import { baseWords } from '#words/panelBase.ts';
import { limits } from '../plan/limits.ts';
import type { Unit, WheelBase } from '../plan/schema.ts';
import type { Controls } from './control.ts';
import type { PlanEdits } from './usePlanEdits.ts';

const words = baseWords.wheel;

/** What lies inside something else is smaller by this at the least, mm. */
const inside = 0.1;

/** Spokes, hub, width across, and the ends laid in partway. */
export function wheelControls(base: WheelBase, unit: Unit, edits: PlanEdits): Controls {
  const { hub, diameter, spokes, added, ...others } = base;
  const laid = added ? { added } : {};
  const whole = { ...others, hub, diameter, spokes };
  const most = limits.ends.most - 2 * spokes;
  const controls: Controls = {
    spokes: {
      kind: 'count',
      label: words.spokes.label,
      word: 'spoke',
      count: spokes,
      ...limits.spokes,
      onCommit: (count, stepped) =>
        edits.base(words.spokes.act, { ...base, spokes: count }, stepped),
    },
    diameter: {
      kind: 'length',
      label: words.diameter.label,
      mm: diameter,
      unit,
      least: Math.max(limits.diameter.least, (added?.at ?? hub) + inside),
      most: limits.diameter.most,
      onCommit: (mm, stepped) => edits.base(words.diameter.act, { ...base, diameter: mm }, stepped),
    },
    hub: {
      kind: 'length',
      label: words.hub.label,
      mm: hub,
      unit,
      least: limits.gap.least,
      most: added?.at ?? diameter - inside,
      onCommit: (mm, stepped) => edits.base(words.hub.act, { ...base, hub: mm }, stepped),
    },
    laidIn: {
      kind: 'count',
      label: words.laidIn.label,
      count: added?.ends ?? 0,
      least: 0,
      most: Math.max(most, added?.ends ?? 0),
      onCommit: (ends, stepped) => {
        const at = added?.at ?? (hub + diameter) / 2;
        const next = ends > 0 ? { added: { ends, at } } : {};
        return edits.base(words.laidIn.act, { ...whole, ...next }, stepped);
      },
    },
  };
  if (!added) return controls;
  return {
    ...controls,
    laidInAt: {
      kind: 'length',
      label: words.laidInAt.label,
      mm: added.at,
      unit,
      least: Math.max(limits.diameter.least, hub),
      most: diameter - inside,
      onCommit: (at, stepped) =>
        edits.base(words.laidInAt.act, { ...whole, ...laid, added: { ...added, at } }, stepped),
    },
  };
}
