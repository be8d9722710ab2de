/** The work in order, with the plan's own numbers. */
import type { Basket } from '../../../model/basket.ts';
import type { Quantities } from '../../../model/quantity/quantities.ts';
import { formatLength } from '../../../plan/units.ts';
import { aboutLength } from './aboutLength.ts';
import { hasBelly } from './rowWords.ts';
import { strandName } from './strandName.ts';

export interface Step {
  readonly title: string;
  readonly text: string;
}

/** Steps from soaking to the handle. */
export function steps(basket: Basket, needs: Quantities): Step[] {
  const { plan, summary, rows } = basket;
  const length = (mm: number) => formatLength(mm, plan.display.unit);
  const list: Step[] = [];
  const say = (title: string, ...sentences: readonly string[]) =>
    list.push({ title, text: sentences.filter((one) => one !== '').join(' ') });
  const stakeCount = needs.stakes.reduce((sum, { count }) => sum + count, 0);
  const { corners, rest } = cornerWords(basket, length);

  say(
    'Soak',
    'Cut and mark the pieces of the cut list. Soak flat stakes about 10 minutes in lukewarm water, thin weavers 10, thicker round reed 15 to 20, half round and rim hoops 30 or more; too long makes them hairy, too short breaks them.',
    'Keep the smooth face out and everything damp while you work.',
  );
  say('Lay out and true the base', layOut(basket, stakeCount, length));
  if (corners) say('Corners', corners);
  say(
    'Weave the rows',
    ...needs.weavers.map((weaver) => {
      const name = strandName(weaver.stock, plan.display.unit);
      const start =
        weaver.startTaper === null
          ? ''
          : `, its start thinned over ${aboutLength(weaver.startTaper, plan.display.unit)}`;
      return `Rows ${weaver.first} to ${weaver.last}: ${name}${start}.`;
    }),
    'Pack each row down, measure it with the tape, and tick it off on the chart. If it is off, write what it came to and put it right over the next rows, a little in each.',
  );
  if (needs.weavers.some(({ lapStakes }) => lapStakes > 0)) {
    say(
      'Splices',
      `A new weaver goes back ${plan.allowances.splice} stakes over the old one, both ends hidden behind a stake. Use every strand to its end, and never splice on a corner.`,
    );
  }
  say('Upsett', upsett(basket), rest);
  say(
    'Shape by the girth line',
    hasBelly(basket)
      ? `Follow the tape girths: the widest is ${length(summary.belly.tapeGirth)} at row ${summary.belly.row}, the rim ${length(summary.rim.tapeGirth)}.`
      : `Follow the tape girths from ${length(rows[0]?.tapeGirth ?? 0)} at row 1 to ${length(summary.rim.tapeGirth)} at the rim.`,
    'A tight weaver brings the stakes together, a slack one lets them out; spread every change over all gaps alike.',
  );
  const end = needs.weavers.at(-1)?.endTaper;
  say(
    'End the weaving',
    end
      ? `Thin the last ${aboutLength(end, plan.display.unit)} so that the top comes out level, and end over the place where the weaver began.`
      : '',
    `After row ${rows.length} the wall stands ${length(summary.height)} over the table. Let it dry, pack it down again, and add a row if it has shrunk.`,
  );
  say(
    'Tuck and cut',
    `Damp the stakes. Those that lie outside the last row are pointed, folded in and tucked behind two or three rows (${length(plan.allowances.tuck)} is left for it); those that lie inside are cut flush with it.`,
  );
  const ears = needs.handle.find(({ part }) => part === 'ear');
  if (ears) {
    say(
      'Ears',
      'Slide the legs of each ear down behind the rows along a stake, about 2 in (5 cm), one in the middle of each side, before the rim goes on.',
    );
  }
  if (plan.handle.kind === 'fixed') say('Handle', ...handleWords(basket, needs, length));
  say(
    'Rim',
    `Lay one hoop outside and one inside over the last row, their laps on opposite sides and away from the handle; thin each end over ${length(needs.rimThinned)}.`,
    plan.rim.filler ? 'Lay the filler on top between them.' : '',
    'Clamp all round.',
  );
  say(
    'Lash',
    `Once round in each of the ${needs.lashes} gaps, pulled tight.`,
    lashedOver[plan.handle.kind],
  );
  if (plan.handle.kind === 'swing') say('Handle', ...handleWords(basket, needs, length));
  return list;
}

/** What the lasher meets on its way round. */
const lashedOver = {
  none: '',
  swing: 'Where the lasher meets an ear, cross it.',
  fixed: 'Where the lasher meets a leg of the handle, cross it.',
} as const;

function handleWords(
  { plan: { handle } }: Basket,
  { wrap }: Quantities,
  length: (mm: number) => string,
): readonly string[] {
  return [
    handle.kind === 'fixed'
      ? `Bend the soaked bow to hold ${length(handle.spread)} between its legs, which go down the wall to the base, before the rim goes on.`
      : 'Bend the soaked bow, hang it in the ears and let it dry in shape.',
    wrap
      ? `Wrap it with ${wrap.turns} turns, wound solid over the first and last ${length(wrap.solid)}.`
      : '',
  ];
}

function cornerWords({ plan }: Basket, length: (mm: number) => string) {
  const corners = 'corners' in plan.base ? plan.base.corners : null;
  const lift =
    'centreLift' in plan.base && plan.base.centreLift > 0
      ? `Push the middle of the base in by ${length(plan.base.centreLift)} while it is wet, so that it stands on its corners.`
      : '';
  if (!corners) return { corners: '', rest: lift };
  if (corners.kind === 'pinned') {
    const pins = `Pin the two stakes of each corner together for the first ${corners.rows} rows; take the pins off at row ${corners.rows + 1}.`;
    return { corners: pins, rest: lift };
  }
  if (corners.kind === 'fanned') {
    const fan = `Let the first ${corners.rows} rows lie flat round the base, with a little more length at each corner.`;
    return { corners: fan, rest: lift };
  }
  return { corners: 'Crease the corners and let them go by themselves.', rest: lift };
}

function layOut({ plan, summary }: Basket, count: number, length: (mm: number) => string): string {
  const size = `${length(summary.baseLength)} × ${length(summary.baseWidth)}`;
  const odd = {
    split: ` Split one stake at the ${plan.oddEnd.at}, down to the base, for the odd end.`,
    added: ` Add one end at the ${plan.oddEnd.at}.`,
    none: '',
  }[plan.oddEnd.kind];
  const template = 'Check it on the base template (with the full-size gauges).';
  const { base } = plan;
  if (base.kind === 'board') {
    return `Stand ${count} stakes in the edge of the board, evenly spaced. ${template}${odd}`;
  }
  if (base.kind === 'wheel') {
    const laidIn = base.added
      ? ` Lay in ${base.added.ends} more ends when it is ${length(base.added.at)} across.`
      : '';
    return (
      `Cross ${base.spokes} spokes at the hub, evenly spread, and weave flat until the base is ` +
      `${length(base.diameter)} across.${laidIn} ${template}${odd}`
    );
  }
  if (base.kind === 'oval') {
    return (
      `Lay ${base.lengthwise} and ${base.crosswise} stakes over and under, lay in the corner ` +
      `stakes, and weave flat to a base of ${size}. ${template}${odd}`
    );
  }
  const fillers = base.fillers ? ' Fillers lie between the stakes and stay in the base.' : '';
  return (
    `Lay the ${count} strands over and under to a base of ${size}. It is true when opposite sides ` +
    `are equal and both diagonals are. ${template}${fillers}${odd}`
  );
}

function upsett({ plan }: Basket): string {
  return 'upsett' in plan.base && plan.base.upsett === 'creased'
    ? 'Fold every stake up sharply over a ruler along the edge of the base.'
    : 'Let the stakes bend up smoothly over the first rows.';
}
