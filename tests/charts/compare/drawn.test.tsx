import { renderToStaticMarkup } from 'react-dom/server';
import { expect, test } from 'vitest';
import { BlendSlider } from '../../../src/charts/compare/BlendSlider.tsx';
import { CompareGirthLine } from '../../../src/charts/compare/CompareGirthLine.tsx';
import { CompareOutlines } from '../../../src/charts/compare/CompareOutlines.tsx';
import { DifferenceTable } from '../../../src/charts/compare/DifferenceTable.tsx';
import { HeightLines } from '../../../src/charts/compare/HeightLines.tsx';
import { MeasureTable } from '../../../src/charts/compare/MeasureTable.tsx';
import { flatFinish } from '../../../src/mesh/flatFinish.ts';
import { outline } from '../../../src/mesh/outline.ts';
import { differences } from '../../../src/model/compare/differences.ts';
import { measures } from '../../../src/model/compare/measures.ts';
import { girthLine } from '../../../src/model/girth/girthLine.ts';
import type { Plan } from '../../../src/plan/schema.ts';
import { formatChange, shownChange } from '../../../src/plan/units.ts';
import { basketOf, flared, jar, trug } from '../../model/compare/baskets.ts';

const nothing = () => undefined;

function girthChart(other: Plan, isSettled = true) {
  const found = differences(basketOf(trug), basketOf(other), 'row', 'in');
  return renderToStaticMarkup(
    <CompareGirthLine
      girths={{ a: girthLine(trug), b: girthLine(other) }}
      blend={girthLine(trug)}
      edited="b"
      plan={other}
      differences={isSettled ? found : null}
      row={null}
      onRow={nothing}
      onChange={nothing}
    />,
  );
}

/** What is written beside the bracket, without its place. */
function labelOf(markup: string): string | undefined {
  return /class="compare-most">.*?<text[^>]*>([^<]*)</.exec(markup)?.[1];
}

function table(other: Plan, by: 'row' | 'height') {
  return renderToStaticMarkup(
    <DifferenceTable
      differences={differences(basketOf(trug), basketOf(other), by, 'in')}
      place={3}
      onPlace={nothing}
      unit="in"
    />,
  );
}

test('the chart has both lines, the area between them and the row where they differ most', () => {
  const markup = girthChart(flared);
  for (const name of ['side-a', 'side-b', 'side-blend']) {
    expect(markup).toContain(`compare-line ${name}`);
  }
  expect(markup).toContain('compare-area');
  expect(markup).toContain('most apart, row 32');
});

test('the bracket and its label speak of the planned lines where those are drawn, also before they have settled', () => {
  const [a, b] = [trug, flared].map((plan) => girthLine(plan).at(-1) ?? Number.NaN);
  const planned = formatChange(shownChange(a ?? 0, b ?? 0, 'in'), 'in');
  const { most } = differences(basketOf(trug), basketOf(flared), 'row', 'in');
  // the tape round both differs by something else, and is told in the table
  expect(formatChange(shownChange(most?.a ?? 0, most?.b ?? 0, 'in'), 'in')).not.toBe(planned);
  for (const isSettled of [true, false])
    expect(labelOf(girthChart(flared, isSettled))).toBe(planned);
});

test('by height, where tape girths are drawn, the label is their difference', () => {
  const [a, b] = [basketOf(trug), basketOf(flared)];
  const found = differences(a, b, 'height', 'in');
  const markup = renderToStaticMarkup(
    <HeightLines
      rows={{ a: a.rows, b: b.rows }}
      differences={found}
      place={null}
      onPlace={nothing}
      unit="in"
    />,
  );
  const { most } = found;
  expect(labelOf(markup)).toBe(formatChange(shownChange(most?.a ?? 0, most?.b ?? 0, 'in'), 'in'));
});

test('two lines that are the same have no bracket', () => {
  expect(girthChart(trug)).not.toContain('compare-most');
});

test('the letters at the ends of both lines stand apart, clear of the ring round a chosen point', () => {
  const markup = girthChart(flared);
  const [a, b] = ['a', 'b'].map((side) => {
    const end = new RegExp(`compare-end side-${side}" x="([\\d.]+)" y="([\\d.]+)"`).exec(markup);
    return { x: Number(end?.[1]), y: Number(end?.[2]) };
  });
  const ring = /data-handle="point-2".*?girth-halo" r="(\d+)"/.exec(markup)?.[1];
  const [, x, y] = /translate\(([\d.]+) ([\d.]+)\)" data-handle="point-2"/.exec(markup) ?? [];
  for (const letter of [a, b]) {
    // of a letter its nearer lower corner: half its width in, its foot is its y
    const across = Math.abs((letter?.x ?? 0) - Number(x)) - 5;
    const up = Number(y) - (letter?.y ?? 0);
    expect(Math.hypot(across, up)).toBeGreaterThan(Number(ring));
    expect(letter?.y).toBeGreaterThan(9);
  }
  expect((b?.x ?? 0) - (a?.x ?? 0)).toBeGreaterThan(24);
});

test('only the points of the edited plan can be dragged', () => {
  expect(girthChart(flared).match(/role="slider"/g)).toHaveLength(3);
});

test('plans of other rows, and plans not settled yet, are drawn without a broken number', () => {
  expect(girthChart(jar)).not.toContain('NaN');
  expect(girthChart(jar, false)).not.toContain('NaN');
});

test('a row of the table says both girths and their difference with its sign', () => {
  const markup = table(flared, 'row');
  expect(markup.match(/<tr data-row/g)).toHaveLength(32);
  const last = basketOf(flared).rows.at(-1)?.tapeGirth ?? 0;
  const first = basketOf(trug).rows.at(-1)?.tapeGirth ?? 0;
  expect(markup).toContain(
    `>${formatChange(shownChange(first, last, 'in'), 'in', { withUnit: false })}<`,
  );
  expect(markup).toContain('32 rows together');
});

test('by height the table names the row of each basket, with dashes where one has ended', () => {
  const markup = table(jar, 'height');
  expect(markup).toContain('Row of A');
  expect(markup).toContain('>–<');
  expect(markup).not.toContain('NaN');
});

test('by height both lines are drawn over the heights', () => {
  const [a, b] = [basketOf(trug), basketOf(jar)];
  const markup = renderToStaticMarkup(
    <HeightLines
      rows={{ a: a.rows, b: b.rows }}
      differences={differences(a, b, 'height', 'cm')}
      place={2}
      onPlace={nothing}
      unit="cm"
    />,
  );
  expect(markup).toContain('compare-area');
  expect(markup).not.toContain('NaN');
});

test('the summary has signs and units', () => {
  const found = measures(basketOf(trug), basketOf(flared));
  const markup = renderToStaticMarkup(<MeasureTable measures={found} unit="in" />);
  expect(markup).toMatch(/data-measure="Rim, tape girth".*?\+\d[^<]* in</);
  expect(markup).toMatch(/data-measure="Capacity".*?\+\d\.\d dry qt</);
});

test('the blend says how far it is and what it comes to', () => {
  const markup = renderToStaticMarkup(
    <BlendSlider share={0.3} girths={girthLine(trug)} unit="in" onShare={nothing} />,
  );
  expect(markup).toContain(
    'aria-valuetext="30 % of the way from A to B: widest 28 15/16 in at row 20',
  );
});

test('outlines tell the two apart by more than colour, also where only one has settled', () => {
  const drawn = (plan: Plan) => ({
    outline: outline(basketOf(plan), 'side'),
    finish: flatFinish(basketOf(plan), 'side'),
  });
  const a = drawn(trug);
  const markup = renderToStaticMarkup(
    <CompareOutlines a={a} b={drawn(jar)} layout="over" title="Side view" />,
  );
  // ears and bow of the one that has a handle, and nothing over the edge of the picture
  expect(markup.match(/compare-handle side-a/g)).toHaveLength(3);
  expect(markup).not.toContain('compare-handle side-b');
  const [, top] = /viewBox="\S+ (\S+)/.exec(markup) ?? [];
  expect(-Number(top)).toBeGreaterThan(a.finish.top);
  expect(markup).toContain('compare-line side-a');
  expect(markup).toContain('compare-line side-b');
  const alone = renderToStaticMarkup(
    <CompareOutlines a={a} b={null} layout="beside" title="Side view" />,
  );
  expect(alone).not.toContain('side-b');
  expect(alone).not.toMatch(/NaN|Infinity/);
});
