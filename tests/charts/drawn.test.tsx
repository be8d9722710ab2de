import { renderToStaticMarkup } from 'react-dom/server';
import { expect, test } from 'vitest';
import { FindingList } from '../../src/charts/FindingList.tsx';
import { GirthLine } from '../../src/charts/GirthLine.tsx';
import { OutlineDrawing } from '../../src/charts/OutlineDrawing.tsx';
import { RowTable } from '../../src/charts/RowTable.tsx';
import { SummaryCard } from '../../src/charts/SummaryCard.tsx';
import { girthLine } from '../../src/model/girth/girthLine.ts';
import { demos } from '../../src/plan/demo/demos.ts';
import { setRowByHand } from '../../src/plan/edit.ts';
import type { Plan } from '../../src/plan/schema.ts';
import { parseLength } from '../../src/plan/units.ts';
import { sampleBasket } from './sampleBasket.ts';

const plan = demos[0].plan;
const basket = sampleBasket(plan, [
  {
    kind: 'ruffles',
    severity: 'stop',
    row: 14,
    rows: [14, 15],
    value: 30,
    limit: 25.4,
    text: 'Row 14 opens by {mm:30}, and the wall follows {mm:25.4} at most.',
  },
]);
const nothing = () => undefined;

function chart(drawn: Plan, row: number | null = null) {
  return renderToStaticMarkup(
    <GirthLine
      plan={drawn}
      girths={girthLine(drawn)}
      basket={basket}
      row={row}
      onRow={nothing}
      onChange={nothing}
    />,
  );
}

function table(drawn: Plan) {
  return renderToStaticMarkup(
    <RowTable
      plan={drawn}
      girths={girthLine(drawn)}
      basket={basket}
      row={14}
      onRow={nothing}
      onChange={nothing}
    />,
  );
}

test('each point of the girth line is a slider that says its row, its girth and what follows', () => {
  const markup = chart(plan);
  expect(markup.match(/role="slider"/g)).toHaveLength(plan.girthLine.points.length);
  expect(markup).toContain('aria-label="Point at row 20"');
  expect(markup).toContain('row 20: girth 28 15/16 in, pulls in 1/4 in a row after it');
});

test('a row set by hand is a slider with a mark of its own', () => {
  const markup = chart(setRowByHand(plan, 13, 711.2));
  expect(markup).toContain('aria-label="Set by hand at row 13"');
  expect(markup).toContain('girth-handle-hand');
});

test('the row pointed at has its numbers above the chart', () => {
  expect(chart(plan, 18)).toContain('<strong>Row 18</strong>');
});

test.each(['in', 'cm', 'mm'] as const)(
  'the change of a row in %s is its tape girth less the one below it, as both stand there',
  (unit) => {
    const lines = [
      ...table({ ...plan, display: { ...plan.display, unit } }).matchAll(
        /class="row-tape">([^<]*)<\/td><td>([^<]*)</g,
      ),
    ].map(([, ...texts]) =>
      texts.map((text) => {
        const read = parseLength(text, unit, { signed: true });
        return read.ok ? read.mm : Number.NaN;
      }),
    );
    expect(lines).toHaveLength(32);
    lines.slice(0, -1).forEach(([girth = 0, change], at) => {
      expect(change).toBeCloseTo(girth - (lines[at + 1]?.[0] ?? Number.NaN), 6);
    });
  },
);

test('the row chart has one line for each row, the last row first', () => {
  const rows = [...table(plan).matchAll(/data-row="(\d+)"/g)].map(([, row]) => Number(row));
  expect(rows).toEqual(Array.from({ length: 32 }, (_, index) => 32 - index));
});

test('a finding is marked in the row chart by a shape and a word', () => {
  const markup = table(plan);
  expect(markup.match(/Cannot be woven: /g)).toHaveLength(2);
  expect(markup).toContain('severity-stop');
});

test('a row set by hand is named as such, and can be cleared', () => {
  expect(table(setRowByHand(plan, 13, 711.2))).toContain('by hand');
  expect(table(setRowByHand(plan, 1, 711.2))).toContain('Clear row 1: back on the girth line');
});

test('a finding is told in the unit of the plan, with a link to its rows', () => {
  const markup = renderToStaticMarkup(<FindingList basket={basket} onRow={nothing} />);
  expect(markup).toContain('Row 14 opens by 1 3/16 in, and the wall follows 1 in at most.');
  expect(markup).toContain('Rows 14 to 15');
  expect(markup).not.toContain('{mm:');
});

const misfit = sampleBasket({ ...plan, oddEnd: { ...plan.oddEnd, kind: 'none' } }, [
  {
    kind: 'count-of-ends',
    severity: 'stop',
    row: 1,
    rows: [1, 2],
    value: 28,
    limit: 29,
    text: 'Rows 1 to 2: one weaver needs an odd count.',
  },
]);

test('a finding that has remedies offers each as a button', () => {
  const markup = renderToStaticMarkup(
    <FindingList basket={misfit} plan={misfit.plan} onRow={nothing} onChange={nothing} />,
  );
  expect(markup).toMatch(/<button type="button" class="finding-remedy">Split a stake<\/button>/);
});

test('where nothing can be changed no remedy is offered', () => {
  const markup = renderToStaticMarkup(<FindingList basket={misfit} onRow={nothing} />);
  expect(markup).not.toContain('finding-remedy');
});

test('the summary tells height, belly, capacity and feet', () => {
  const markup = renderToStaticMarkup(<SummaryCard basket={basket} />);
  for (const fact of [
    '5 in',
    'at row 18',
    '30 in',
    '4.0 dry qt',
    '4.4 litres',
    'four feet',
    '29 ends',
  ]) {
    expect(markup).toContain(fact);
  }
});

test('an outline has its size in words and its marked row', () => {
  const outline = {
    silhouette: [0, 0, 100, 0, 120, 80, -20, 80],
    rows: [{ row: 3, line: [0, 40, 100, 40] }],
    stakes: [{ end: 0, line: [50, 0, 50, 80] }],
    table: [-10, 0, 110, 0],
    ...{ left: -20, right: 120, bottom: 0, top: 80, width: 140, height: 80, wall: 79 },
  };
  const finish = {
    hoop: [-20, 78, 120, 78, 120, 84, -20, 84],
    handle: [[40, 60, 60, 60, 60, 150, 40, 150]],
    ...{ left: -20, right: 120, top: 150 },
  };
  const markup = renderToStaticMarkup(
    <OutlineDrawing outline={outline} finish={finish} row={3} unit="mm" title="Side view" />,
  );
  expect(markup).toContain('Side view: 140 mm wide, 79 mm high without its rim');
  expect(markup).toContain('outline-marked');
  // the handle behind the wall, the hoop before it, and room for both
  const [handle, wall, hoop] = ['handle', 'ground', 'hoop'].map((part) =>
    markup.indexOf(`outline-${part}`),
  );
  expect(handle).toBeGreaterThan(0);
  expect(wall).toBeGreaterThan(handle ?? 0);
  expect(hoop).toBeGreaterThan(wall ?? 0);
  const [, top = ''] = /viewBox="[-\d.]+ ([-\d.]+)/.exec(markup) ?? [];
  expect(Number(top)).toBeLessThan(-150);
});
