/** The row chart as a table for a spreadsheet, in the plan's unit. */
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

/** What a tape is read to, as `formatLength` writes it. */
const tapeMark: Readonly<Record<Unit, string>> = {
  in: 'in, to the nearest 1/16',
  cm: 'cm, to the nearest 0.1',
  mm: 'mm, to the nearest 0.1',
};

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
  const length = (mm: number) => rounded(mm / unitLength[unit], places[unit]);
  return [
    ['row (number)', ({ row }) => row],
    ['band (number)', ({ row }) => plan.bands.indexOf(bandOfRow(plan, row)) + 1],
    [`weaver (width x thickness, ${unit})`, ({ row }) => weaver(plan, row, length)],
    [`tape girth (${unit})`, ({ tapeGirth }) => length(tapeGirth)],
    [
      `tape girth to weave to (${tapeMark[unit]})`,
      ({ tapeGirth }) => formatLength(tapeGirth, unit, { withUnit: false }),
    ],
    [`change from the row before (${unit})`, ({ change }) => length(change)],
    [`change per stake gap (${unit})`, ({ changePerGap }) => length(changePerGap)],
    [`length (${unit})`, (row) => length(row.length)],
    [`width (${unit})`, ({ width }) => length(width)],
    [`height at the sides (${unit})`, ({ heightSide }) => length(heightSide)],
    [`height at the corners (${unit})`, ({ heightCorner }) => length(heightCorner)],
    ['lean outward (degrees)', ({ lean }) => rounded(lean, 2)],
    [`least gap between stakes (${unit})`, ({ gapLeast }) => length(gapLeast)],
    [`most gap between stakes (${unit})`, ({ gapMost }) => length(gapMost)],
    [`wall so far (${unit})`, ({ wall }) => length(wall)],
    [`planned girth in the middle of the wall (${unit})`, ({ girth }) => length(girth)],
    [`reached girth in the middle of the wall (${unit})`, (row) => length(row.girthReached)],
  ];
}

/** `flat-oval 0.1732 x 0.063, natural`. */
function weaver(plan: Plan, row: number, length: (mm: number) => number): string {
  const band = bandOfRow(plan, row);
  const { section, width, thickness } = band.weaver;
  return `${section} ${length(width)} x ${length(thickness)}, ${band.colour}`;
}
