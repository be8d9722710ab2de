import { weaves } from '../plan/bands.ts';
import { rowCount } from '../plan/counts.ts';
import { limits } from '../plan/limits.ts';
import type { Band, Unit, Weave } from '../plan/schema.ts';
import type { Controls } from './control.ts';
import { strandControls } from './strandControls.ts';
import type { PlanEdits } from './usePlanEdits.ts';

const weaveText: Readonly<Record<Weave, string>> = {
  continuous: 'continuous',
  rounds: 'start-stop rounds',
  twined: 'twined',
  chased: 'chased',
  twill: 'twill, over two under two',
};

/** Rows, weave, weaver, packing and colour of band `index`. */
export function bandControls(band: Band, index: number, unit: Unit, edits: PlanEdits): Controls {
  const name = `band ${index + 1}`;
  const set = (label: string, part: Partial<Band>, stepped = false) =>
    edits.change(
      `${label} of ${name}`,
      (plan) => ({
        ...plan,
        bands: plan.bands.map((one, at) => (at === index ? { ...one, ...part } : one)),
      }),
      stepped,
    );
  return {
    rows: {
      kind: 'count',
      label: 'Rows',
      word: 'row',
      count: band.rows,
      least: limits.rows.least,
      most: limits.rows.most,
      onCommit: (rows, stepped) => {
        const plan = edits.plan();
        const all = rowCount(plan) - band.rows + rows;
        if (all > limits.rows.most) {
          return `Rows: at most ${limits.rows.most} in all bands; found ${all}`;
        }
        const bands = plan.bands.map((one, at) => (at === index ? { ...one, rows } : one));
        return edits.bands(`the rows of ${name}`, bands, stepped);
      },
    },
    weave: {
      kind: 'choice',
      label: 'Weave',
      word: 'weave',
      value: band.weave,
      choices: weaves.map((value) => ({ value, text: weaveText[value] })),
      onCommit: (word) =>
        set('the weave', { weave: weaves.find((one) => one === word) ?? band.weave }),
    },
    ...strandControls('Weaver', band.weaver, unit, (label, weaver, stepped) =>
      set(label, { weaver }, stepped),
    ),
    packing: {
      kind: 'share',
      label: 'Packing',
      word: 'packing',
      share: band.packing,
      ...limits.packing,
      onCommit: (packing) => set('the packing', { packing }, true),
    },
    colour: {
      kind: 'colour',
      label: 'Colour',
      colour: band.colour,
      onCommit: (colour, stepped) => set('the colour', { colour }, stepped),
    },
  };
}
