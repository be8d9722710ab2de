/** What to cut, what to weave with and what to buy, as tables. */
import type { Basket } from '../../../model/basket.ts';
import type { Part } from '../../../model/quantity/part.ts';
import type { Quantities } from '../../../model/quantity/quantities.ts';
import type { ShoppingLine } from '../../../model/quantity/shopping.ts';
import type { WeaverNeed } from '../../../model/quantity/weavers.ts';
import type { Unit } from '../../../plan/schema.ts';
import { formatLength } from '../../../plan/units.ts';
import type { Flow } from '../page/flow.ts';
import { inks } from '../page/mark.ts';
import { table } from '../page/table.ts';
import { aboutLength } from './aboutLength.ts';
import { strandName } from './strandName.ts';

/** Pieces to cut before weaving, and those that wait for the rim. */
export function cutTable(flow: Flow, { plan }: Basket, needs: Quantities): void {
  const { unit } = plan.display;
  const parts: readonly Part[] = [...needs.stakes, ...needs.rim, ...needs.handle];
  table(
    flow,
    [
      { title: 'Done', share: 11, align: 'middle', blank: 'tick' },
      { title: 'Piece', share: 54 },
      { title: 'How many', share: 20, align: 'middle' },
      { title: 'Cut length', share: 26, bold: true },
      { title: 'From', share: 46 },
    ],
    parts.map(({ part, count, length, stock }) => [
      '',
      part.charAt(0).toUpperCase() + part.slice(1),
      `${count}`,
      formatLength(length, unit),
      strandName(stock, unit),
    ]),
    { rowHeight: 5.6 },
  );
  flow.paragraph(
    `Cut lengths are rounded up to ${formatLength(needs.step, unit)}; stakes have ` +
      `${formatLength(plan.allowances.tuck, unit)} to tuck at each end. Hoop ends lap ` +
      `${formatLength(needs.rimLap, unit)}: thin each over ${formatLength(needs.rimThinned, unit)}. ` +
      `The lasher goes through ${needs.lashes} gaps.` +
      (needs.wrap
        ? ` The handle takes ${needs.wrap.turns} turns of wrap, wound solid over ` +
          `${formatLength(needs.wrap.solid, unit)} at each end.`
        : ''),
    { size: 8.5, ink: inks.soft },
  );
}

/** Weavers by band. */
export function weaverTable(flow: Flow, { plan }: Basket, { weavers }: Quantities): void {
  const { unit } = plan.display;
  table(
    flow,
    [
      { title: 'Rows', share: 16 },
      { title: 'Weaver', share: 46 },
      { title: 'Weave', share: 26 },
      { title: 'In all', share: 17, bold: true },
      { title: 'Strands', share: 18, align: 'middle' },
      { title: 'Ends', share: 60 },
    ],
    weavers.map((weaver) => [
      `${weaver.first}–${weaver.last}`,
      strandName(weaver.stock, unit),
      weaver.weave === 'rounds' ? 'start-stop' : weaver.weave,
      longLength(weaver.length, unit),
      `${weaver.strands}`,
      endsOf(weaver, unit),
    ]),
  );
}

function endsOf(weaver: WeaverNeed, unit: Unit): string {
  const lap = `lap ${weaver.lapStakes} stakes (${formatLength(weaver.lap, unit)})`;
  if (weaver.piece !== null) return `${formatLength(weaver.piece, unit)} a row; ${lap}`;
  const thin = [
    weaver.startTaper === null ? '' : `thin the start over ${aboutLength(weaver.startTaper, unit)}`,
    weaver.endTaper === null ? '' : `thin the end over ${aboutLength(weaver.endTaper, unit)}`,
  ].filter((text) => text !== '');
  return [lap, ...thin].join('; ');
}

/** What to buy for `baskets` baskets. */
export function shoppingTable(
  flow: Flow,
  { plan }: Basket,
  lines: readonly ShoppingLine[],
  baskets: number,
): void {
  const { unit } = plan.display;
  table(
    flow,
    [
      { title: 'Strand', share: 46 },
      { title: 'For', share: 48 },
      { title: baskets === 1 ? 'Length' : `Length for ${baskets}`, share: 24 },
      { title: 'Buy', share: 32, bold: true },
      { title: 'A coil or hank holds', share: 40 },
    ],
    lines.map(({ material, length, unit: sold, perUnit, buy, source }) => [
      strandName(material.stock, unit),
      material.uses.join(', '),
      longLength(length, unit),
      `${buy} × ${sold}`,
      `${longLength(perUnit, unit)} (${source})`,
    ]),
    { size: 8 },
  );
}

/** Strand by the foot or the metre. */
function longLength(mm: number, unit: Unit): string {
  if (unit === 'in') return `${Math.ceil(mm / 304.8 - 1e-6)} ft`;
  const metres = mm / 1000;
  return metres < 20
    ? `${(Math.ceil(metres * 10 - 1e-6) / 10).toFixed(1)} m`
    : `${Math.ceil(metres - 1e-6)} m`;
}
