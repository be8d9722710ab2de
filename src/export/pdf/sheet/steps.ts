/** The work in order, with the plan's own numbers. */
import { listWords } from '#words/lists.ts';
import { oddEndPlaceWords } from '#words/oddEndPlaces.ts';
import { sheetStepWords as w } from '#words/sheetSteps.ts';
import type { Basket } from '../../../model/basket.ts';
import type { Quantities } from '../../../model/quantity/quantities.ts';
import { undyed } from '../../../model/quantity/stock.ts';
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
    list.push({ title, text: listWords.sentences(sentences.filter((one) => one !== '')) });
  const stakeCount = needs.stakes.reduce((sum, { count }) => sum + count, 0);

  const isDyed = needs.weavers.some(({ stock }) => stock.colour !== undyed);
  say(w.soak.title, w.soak.pieces, isDyed ? w.soak.dyed : '', w.soak.damp);
  say(w.layOut.title, ...layOut(basket, stakeCount, length));
  const corners = cornerWords(basket);
  if (corners) say(w.corners.title, corners);
  say(
    w.weave.title,
    ...needs.weavers.map(({ stock, first, last, startTaper }) => {
      const name = strandName(stock, plan.display.unit);
      return startTaper === null
        ? w.weave.rows(first, last, name)
        : w.weave.rowsThinned(first, last, name, aboutLength(startTaper, plan.display.unit));
    }),
    w.weave.measure,
  );
  if (needs.weavers.some(({ lapStakes }) => lapStakes > 0)) {
    say(w.splices.title, w.splices.text(plan.allowances.splice));
  }
  say(w.upsett.title, upsett(basket), liftWords(basket, length));
  const [belly, rim] = [summary.belly, length(summary.rim.tapeGirth)];
  say(
    w.shape.title,
    hasBelly(basket)
      ? w.shape.belly(length(belly.tapeGirth), belly.row, rim)
      : w.shape.plain(length(rows[0]?.tapeGirth ?? 0), rim),
    w.shape.spread,
  );
  const end = needs.weavers.at(-1)?.endTaper;
  say(
    w.end.title,
    end ? w.end.thin(aboutLength(end, plan.display.unit)) : '',
    w.end.dry(rows.length, length(summary.height)),
  );
  say(w.tuck.title, w.tuck.text(length(plan.allowances.tuck)));
  if (needs.handle.some(({ part }) => part === 'ear')) say(w.ears.title, w.ears.text);
  if (plan.handle.kind === 'fixed') say(w.handle.title, ...handleWords(basket, needs, length));
  say(
    w.rim.title,
    w.rim.hoops(length(needs.rimThinned)),
    plan.rim.filler ? w.rim.filler : '',
    w.rim.clamp,
  );
  say(w.lash.title, w.lash.once(needs.lashes), w.lash.over[plan.handle.kind]);
  if (plan.handle.kind === 'swing') say(w.handle.title, ...handleWords(basket, needs, length));
  return list;
}

function handleWords(
  { plan: { handle } }: Basket,
  { wrap }: Quantities,
  length: (mm: number) => string,
): readonly string[] {
  return [
    handle.kind === 'fixed' ? w.handle.fixed(length(handle.spread)) : w.handle.swing,
    wrap ? w.handle.wrap(wrap.turns) : '',
    w.handle.load,
  ];
}

function cornerWords({ plan }: Basket): string {
  const corners = 'corners' in plan.base ? plan.base.corners : null;
  if (!corners) return '';
  if (corners.kind === 'pinned') return w.corners.pinned(corners.rows, corners.rows + 1);
  if (corners.kind === 'fanned') return w.corners.fanned(corners.rows);
  return w.corners.square;
}

function layOut(
  { plan, summary }: Basket,
  count: number,
  length: (mm: number) => string,
): readonly string[] {
  const { base, oddEnd } = plan;
  const { template } = w.layOut;
  const size = [length(summary.baseLength), length(summary.baseWidth)] as const;
  const place = oddEndPlaceWords.at[oddEnd.at];
  const odd = {
    split: w.layOut.split(place),
    added: w.layOut.added(place),
    none: '',
  }[oddEnd.kind];
  if (base.kind === 'board') return [w.layOut.board(count), template, odd];
  if (base.kind === 'wheel') {
    const { added } = base;
    const laidIn = added ? w.layOut.laidIn(added.ends, length(added.at)) : '';
    return [w.layOut.wheel(base.spokes, length(base.diameter)), laidIn, template, odd];
  }
  if (base.kind === 'oval') {
    return [w.layOut.oval(base.lengthwise, base.crosswise, ...size), template, odd];
  }
  return [w.layOut.mat(count, ...size), template, base.fillers ? w.layOut.fillers : '', odd];
}

function upsett({ plan }: Basket): string {
  return 'upsett' in plan.base && plan.base.upsett === 'creased'
    ? w.upsett.creased
    : w.upsett.rolled;
}

/** What is done to the middle of the base, so that it stands off the table. */
function liftWords({ plan }: Basket, length: (mm: number) => string): string {
  return 'centreLift' in plan.base && plan.base.centreLift > 0
    ? w.upsett.lift(length(plan.base.centreLift))
    : '';
}
