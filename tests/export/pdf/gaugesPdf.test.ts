import { expect, test, vi } from 'vitest';
import { baseTemplate } from '../../../src/export/pdf/gauge/baseTemplate.ts';
import { gaugesPdf } from '../../../src/export/pdf/gaugesPdf.ts';
import { rulerOf } from '../../../src/export/pdf/page/ruler.ts';
import { shapeJson } from '../../../src/export/shapeJson.ts';
import { outline } from '../../../src/mesh/outline.ts';
import { settledDemo } from '../settledDemo.ts';
import type { DrawnPath } from './poppler.ts';
import { drawnPaths, pdfFonts, pdfInfo, pdfText, testFonts } from './poppler.ts';

vi.setConfig({ testTimeout: 60_000 });

/** What a length on paper may be off by, mm. */
const off = 0.2;

const basket = settledDemo('in');
const shape = shapeJson(basket);
const bytes = await gaugesPdf(basket, testFonts(), { date: new Date(2026, 2, 9) });
const texts = pdfText(bytes)
  .split('\f')
  .filter((page) => page.trim() !== '');
const pages = texts.map((_, at) => drawnPaths(bytes, at + 1));

/** Paths of the pages that have `title`, drawn in `stroke` and about `width` mm wide. */
function drawn(title: string, stroke: string, width: number): DrawnPath[][] {
  return pages
    .filter((_, at) => texts[at]?.includes(title))
    .map((paths) =>
      paths.filter((path) => path.stroke === stroke && Math.abs(path.width - width) < 0.01),
    );
}

const [black, blue, brown, grey] = ['0,0,0', '31,78,95', '138,59,18', '86,95,99'];
const span = (values: readonly number[]) => Math.max(...values) - Math.min(...values);
const xs = ({ points }: DrawnPath) => points.map(([x]) => x);
const ys = ({ points }: DrawnPath) => points.map(([, y]) => y);

test('every page has a bar of 100 mm and one of 4 in', () => {
  expect(pages).toHaveLength(Number(pdfInfo(bytes).get('Pages')));
  for (const paths of pages) {
    const bars = paths
      .filter(({ stroke, width }) => stroke === brown && Math.abs(width - 0.5) < 0.01)
      .map((path) => span(xs(path)))
      .filter((length) => length > 1);
    expect(bars).toHaveLength(2);
    expect(Math.abs((bars[0] ?? 0) - 100)).toBeLessThan(off);
    expect(Math.abs((bars[1] ?? 0) - 4 * 25.4)).toBeLessThan(off);
  }
});

test.each(['side', 'end'] as const)('the %s gauge has each row at its height and reach', (view) => {
  const name = view === 'side' ? 'Side gauge' : 'End gauge';
  const [ticks = []] = drawn(name, blue ?? '', 0.18);
  const [dashes = []] = drawn(name, grey ?? '', 0.25);
  const middle = Math.min(...dashes.flatMap(xs));
  const table = Math.max(...dashes.flatMap(ys));
  const { rows, left, right } = outline(basket, view);
  expect(ticks).toHaveLength(shape.rows.length);
  const { plan } = basket;
  ticks.forEach((tick, at) => {
    const loop = rows[at + 1]?.line ?? [];
    const band = plan.bands[basket.net.rows[at + 1]?.band ?? 0];
    const face = plan.base.stake.thickness / 2 + (band?.weaver.thickness ?? 0);
    const reach = (loop.at(-2) ?? 0) + face - (left + right) / 2;
    expect(Math.abs(Math.min(...xs(tick)) - middle - reach)).toBeLessThan(off);
    expect(Math.abs(table - (ys(tick)[0] ?? 0) - (loop.at(-1) ?? 0))).toBeLessThan(off);
  });
});

test('the side gauge’s rim stands half of the rim’s length from the middle', () => {
  // the summary's length is over the outer faces, as measured; the gauge's that of one side
  const [ticks = []] = drawn('Side gauge', blue ?? '', 0.18);
  const [dashes = []] = drawn('Side gauge', grey ?? '', 0.25);
  const reach = Math.min(...xs(ticks.at(-1) as DrawnPath)) - Math.min(...dashes.flatMap(xs));
  expect(Math.abs(2 * reach - shape.summary.rim.length)).toBeLessThan(3);
});

test('on the joined strip, each row’s mark lies at its tape girth from the zero line', () => {
  const strips = drawn('Tape strip', blue ?? '', 0.15);
  const zeros = drawn('Tape strip', black ?? '', 0.4).flat();
  expect(zeros).toHaveLength(1);
  const left = xs(zeros[0] as DrawnPath)[0] ?? 0;
  // each piece ends where its glue tab begins: the tab's left edge
  const tabs = pages
    .filter((_, at) => texts[at]?.includes('Tape strip'))
    .map((paths) => paths.filter(({ stroke, width }) => stroke === '185,189,184' && width > 0.19));
  const step =
    Math.min(
      ...tabs
        .flat()
        .filter((tab) => span(ys(tab)) > 20)
        .flatMap(xs),
    ) - left;
  const marks: number[] = [];
  let piece = -1;
  let lastBottom = Number.NEGATIVE_INFINITY;
  for (const strip of strips) {
    lastBottom = Number.NEGATIVE_INFINITY;
    // marks come piece by piece, down the page; empty pieces are told by their place
    const bottoms = strip.map((mark) => Math.max(...ys(mark)));
    const first = Math.min(...ys(zeros[0] as DrawnPath));
    strip.forEach((mark, at) => {
      const bottom = bottoms[at] ?? 0;
      if (bottom !== lastBottom) {
        piece = Math.round((bottom - first - 30) / 37);
        lastBottom = bottom;
      }
      marks.push(piece * step + (xs(mark)[0] ?? 0) - left);
    });
  }
  const girths = shape.rows.map(({ tapeGirth }) => tapeGirth).sort((one, other) => one - other);
  expect(marks).toHaveLength(girths.length);
  marks
    .sort((one, other) => one - other)
    .forEach((mark, at) => {
      expect(Math.abs(mark - (girths[at] ?? 0))).toBeLessThan(off);
    });
});

test('the base template is as wide as the base, with every stake in its place', () => {
  const edge = drawn('Base template', black ?? '', 0.35);
  // 5 stakes of 15.9 mm with gaps of 9.5 mm
  const width = 5 * 15.9 + 4 * 9.5;
  expect(Math.abs(span(edge[0]?.flatMap(ys) ?? []) - width)).toBeLessThan(off);
  const lines = drawn('Base template', blue ?? '', 0.12)[0] ?? [];
  const level = lines
    .filter((path) => span(ys(path)) < 0.01)
    .map((path) => ys(path)[0] ?? 0)
    .sort((one, other) => one - other);
  const places = Array.from({ length: 5 }, (_, at) => [at * 25.4, at * 25.4 + 15.9]).flat();
  expect(level).toHaveLength(places.length);
  places.forEach((place, at) => {
    expect(Math.abs((level[at] ?? 0) - (level[0] ?? 0) - place)).toBeLessThan(off);
  });
});

test('pieces of the base template join to the base’s length by their crosses', () => {
  const edges = drawn('Base template', black ?? '', 0.35);
  const crosses = drawn('Base template', grey ?? '', 0.2);
  expect(edges).toHaveLength(2);
  const middle = (paths: readonly DrawnPath[]) =>
    paths.filter((path) => span(xs(path)) < 0.01).map((path) => xs(path)[0] ?? 0)[0] ?? 0;
  const west = middle(crosses[0] ?? []) - Math.min(...(edges[0]?.flatMap(xs) ?? []));
  const east = Math.max(...(edges[1]?.flatMap(xs) ?? [])) - middle(crosses[1] ?? []);
  expect(Math.abs(west + east - (9 * 15.9 + 8 * 9.5))).toBeLessThan(off);
});

test('no line of the base template is broken, and its sizes stand under all of them', () => {
  const { marks, height } = baseTemplate(basket, rulerOf(testFonts()));
  const lines = marks.filter((mark) => mark.kind !== 'text');
  // nothing is laid over the lines
  expect(lines.filter(({ fill }) => fill)).toEqual([]);
  const lowest = Math.max(...lines.flatMap(({ points }) => points.filter((_, at) => at % 2 === 1)));
  const [sizes, ...others] = marks.filter((mark) => mark.kind === 'text');
  expect(others).toEqual([]);
  // its letters are under 3 mm high
  expect((sizes?.y ?? 0) - 3).toBeGreaterThan(lowest);
  expect(sizes?.y).toBeLessThan(height);
});

test('fonts are embedded and the file is clean', () => {
  for (const font of pdfFonts(bytes))
    expect(font).toMatchObject({ embedded: 'yes', unicode: 'yes' });
});
