import { bandWords } from '#words/panelBands.ts';
import { weaveWords } from '#words/weaves.ts';
import { weaves } from '../plan/bands.ts';
import { rowCount } from '../plan/counts.ts';
import { limits } from '../plan/limits.ts';
import type { Band, Unit } from '../plan/schema.ts';
import type { Controls } from './control.ts';
import { choicesOf } from './control.ts';
import { strandControls } from './strandControls.ts';
import type { PlanEdits } from './usePlanEdits.ts';

/** Rows, weave, weaver, packing and colour of band `index`. */
export function bandControls(band: Band, index: number, unit: Unit, edits: PlanEdits): Controls {
  const { labels, acts } = bandWords;
  const place = index + 1;
  const set = (act: (band: number) => string, part: Partial<Band>, stepped = false) =>
    edits.change(
      act(place),
      (plan) => ({
        ...plan,
        bands: plan.bands.map((one, at) => (at === index ? { ...one, ...part } : one)),
      }),
      stepped,
    );
  return {
    rows: {
      kind: 'count',
      label: labels.rows,
      word: 'row',
      count: band.rows,
      least: limits.rows.least,
      most: limits.rows.most,
      onCommit: (rows, stepped) => {
        const plan = edits.plan();
        const all = rowCount(plan) - band.rows + rows;
        if (all > limits.rows.most) {
          return bandWords.tooMany(limits.rows.most, all);
        }
        const bands = plan.bands.map((one, at) => (at === index ? { ...one, rows } : one));
        return edits.bands(acts.rows(place), bands, stepped);
      },
    },
    weave: {
      kind: 'choice',
      label: labels.weave,
      word: 'weave',
      value: band.weave,
      choices: choicesOf(weaves, weaveWords.names),
      onCommit: (word) =>
        set(acts.weave, { weave: weaves.find((one) => one === word) ?? band.weave }),
    },
    ...strandControls('weaver', band.weaver, unit, (part, weaver, stepped) =>
      set(acts.weaver[part], { weaver }, stepped),
    ),
    packing: {
      kind: 'share',
      label: labels.packing,
      word: 'packing',
      share: band.packing,
      ...limits.packing,
      onCommit: (packing) => set(acts.packing, { packing }, true),
    },
    colour: {
      kind: 'colour',
      label: labels.colour,
      colour: band.colour,
      onCommit: (colour, stepped) => set(acts.colour, { colour }, stepped),
    },
  };
}
