/** The row chart as a table for a spreadsheet, in the plan's unit. */
import { rowsCsvWords as w } from '#words/rowsCsv.ts';
import { unitWords } from '#words/units.ts';
import type { Basket, RowReading } from '../model/basket.ts';
import { bandOfRow } from '../plan/counts.ts';
import type { Plan, Unit } from '../plan/schema.ts';
import { formatLength, unitLength } from '../plan/units.ts';
import { csv } from './csv.ts';
import { rounded } from './rounded.ts';

/** A column: its heading, unit included, and what stands in it. */
type Column = readonly [heading: string, value: (row: RowReading) => string | number];

/** Decimals written in each unit: about a hundredth of a millimetre or finer. */
const places: Readonly<Record<Unit, number>> = { in: 4, cm: 3, mm: 2 };

/** One line of headings, then a line for each row from the base up. */
export function rowsCsv(basket: Basket): string {
  const columns = columnsOf(basket.plan);
  return csv([
    columns.map(([heading]) => heading),
    ...basket.rows.map((row) => columns.map(([, value]) => value(row))),
  ]);
}

function columnsOf(plan: Plan): readonly Column[] {
  const { unit } = plan.display;
  const name = unitWords.length[unit];
  const length = (mm: number) => rounded(mm / unitLength[unit], places[unit]);
  return [
    [w.row, ({ row }) => row],
    [w.band, ({ row }) => plan.bands.indexOf(bandOfRow(plan, row)) + 1],
    [w.weaver(name), ({ row }) => weaver(plan, row, length)],
    [w.tapeGirth(name), ({ tapeGirth }) => length(tapeGirth)],
    [w.weaveTo[unit], ({ tapeGirth }) => formatLength(tapeGirth, unit, { withUnit: false })],
    [w.change(name), ({ change }) => length(change)],
    [w.changePerGap(name), ({ changePerGap }) => length(changePerGap)],
    [w.length(name), (row) => length(row.length)],
    [w.width(name), ({ width }) => length(width)],
    [w.heightSide(name), ({ heightSide }) => length(heightSide)],
    [w.heightCorner(name), ({ heightCorner }) => length(heightCorner)],
    [w.lean, ({ lean }) => rounded(lean, 2)],
    [w.gapLeast(name), ({ gapLeast }) => length(gapLeast)],
    [w.gapMost(name), ({ gapMost }) => length(gapMost)],
    [w.wall(name), ({ wall }) => length(wall)],
    [w.plannedGirth(name), ({ girth }) => length(girth)],
    [w.reachedGirth(name), (row) => length(row.girthReached)],
  ];
}

/** `flat-oval 0.1732 x 0.063, natural`. */
function weaver(plan: Plan, row: number, length: (mm: number) => number): string {
  const band = bandOfRow(plan, row);
  const { section, width, thickness } = band.weaver;
  return `${section} ${length(width)} x ${length(thickness)}, ${band.colour}`;
}
