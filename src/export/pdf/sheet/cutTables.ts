/** What to cut, what to weave with and what to buy, as tables. */
import { listWords } from '#words/lists.ts';
import { sheetCutWords } from '#words/sheetCut.ts';
import { weaveWords } from '#words/weaves.ts';
import type { Basket } from '../../../model/basket.ts';
import type { Part } from '../../../model/quantity/part.ts';
import type { Quantities } from '../../../model/quantity/quantities.ts';
import type { ShoppingLine } from '../../../model/quantity/shopping.ts';
import type { WeaverNeed } from '../../../model/quantity/weavers.ts';
import { measureText } from '../../../plan/measureText.ts';
import type { Unit } from '../../../plan/schema.ts';
import { formatLength } from '../../../plan/units.ts';
import type { Flow } from '../page/flow.ts';
import { table } from '../page/table.ts';
import { aboutLength } from './aboutLength.ts';
import { strandName } from './strandName.ts';

/** Pieces to cut before weaving, and those that wait for the rim. */
export function cutTable(flow: Flow, { plan }: Basket, needs: Quantities): void {
  const { unit } = plan.display;
  const w = sheetCutWords.cut;
  const parts: readonly Part[] = [...needs.stakes, ...needs.rim, ...needs.handle];
  const text = (mm: number) => formatLength(mm, unit);
  const note = w.note(
    text(needs.step),
    text(plan.allowances.tuck),
    text(needs.rimLap),
    text(needs.rimThinned),
    needs.lashes,
  );
  const under = listWords.sentences(needs.wrap ? [note, w.wrap(needs.wrap.turns)] : [note]);
  table(
    flow,
    [
      { title: w.done, share: 11, align: 'middle', blank: 'tick' },
      { title: w.piece, share: 54 },
      { title: w.count, share: 20, align: 'middle' },
      { title: w.length, share: 26, bold: true },
      { title: w.from, share: 46 },
    ],
    parts.map(({ part, count, length, stock }) => [
      '',
      w.pieceName(part),
      `${count}`,
      formatLength(length, unit),
      strandName(stock, unit),
    ]),
    { rowHeight: 5.6, over: { heading: w.heading }, under },
  );
}

/** Weavers by band. */
export function weaverTable(flow: Flow, { plan, summary }: Basket, { weavers }: Quantities): void {
  const { unit } = plan.display;
  const w = sheetCutWords.weavers;
  table(
    flow,
    [
      { title: w.rows, share: 16 },
      { title: w.weaver, share: 46 },
      { title: w.weave, share: 26 },
      { title: w.length, share: 17, bold: true },
      { title: w.strands, share: 18, align: 'middle' },
      { title: w.ends, share: 60 },
    ],
    weavers.map((weaver) => [
      `${weaver.first}–${weaver.last}`,
      strandName(weaver.stock, unit),
      weaveWords.short[weaver.weave],
      longLength(weaver.length, unit),
      `${weaver.strands}`,
      endsOf(weaver, unit),
    ]),
    {
      over: { heading: w.heading },
      under: w.together(measureText('strand', summary.weaverLength, unit)),
    },
  );
}

function endsOf(weaver: WeaverNeed, unit: Unit): string {
  const w = sheetCutWords.weavers;
  const lap = w.lap(weaver.lapStakes, formatLength(weaver.lap, unit));
  if (weaver.piece !== null) {
    return listWords.steps([w.pieceARow(formatLength(weaver.piece, unit)), lap]);
  }
  const thin = [
    weaver.startTaper === null ? '' : w.thinStart(aboutLength(weaver.startTaper, unit)),
    weaver.endTaper === null ? '' : w.thinEnd(aboutLength(weaver.endTaper, unit)),
  ].filter((text) => text !== '');
  return listWords.steps([lap, ...thin]);
}

/** What to buy for `baskets` baskets; `note` stands over it. */
export function shoppingTable(
  flow: Flow,
  { plan }: Basket,
  lines: readonly ShoppingLine[],
  baskets: number,
  note?: string,
): void {
  const { unit } = plan.display;
  const w = sheetCutWords.buy;
  table(
    flow,
    [
      { title: w.strand, share: 46 },
      { title: w.use, share: 48 },
      { title: baskets === 1 ? w.length : w.lengthFor(baskets), share: 24 },
      { title: w.buy, share: 32, bold: true },
      { title: w.holds, share: 40 },
    ],
    lines.map(({ material, length, unit: sold, perUnit, buy, source }) => [
      strandName(material.stock, unit),
      listWords.things(material.uses),
      longLength(length, unit),
      `${buy} × ${sold}`,
      `${longLength(perUnit, unit)} (${source})`,
    ]),
    {
      size: 8,
      over: {
        heading: baskets === 1 ? w.heading : w.headingForClass(baskets),
        ...(note === undefined ? {} : { note }),
      },
    },
  );
}

/** Strand by the foot or the metre. */
function longLength(mm: number, unit: Unit): string {
  if (unit === 'in') return sheetCutWords.feet(`${Math.ceil(mm / 304.8 - 1e-6)}`);
  const metres = mm / 1000;
  return sheetCutWords.metres(
    metres < 20 ? (Math.ceil(metres * 10 - 1e-6) / 10).toFixed(1) : `${Math.ceil(metres - 1e-6)}`,
  );
}
