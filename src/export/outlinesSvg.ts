/** Side and end of the basket as a vector drawing in true size, with dimensions. */
import { outlineDrawingWords as w } from '#words/outlineDrawing.ts';
import type { FlatFinish } from '../mesh/flatFinish.ts';
import { flatFinish } from '../mesh/flatFinish.ts';
import type { Outline } from '../mesh/outline.ts';
import { outline } from '../mesh/outline.ts';
import type { Basket } from '../model/basket.ts';
import { formatLength } from '../plan/units.ts';
import { dimensionSvg, escaped, pathSvg, textSvg } from './svgPieces.ts';

/** Room round each outline for its dimensions, in heights of a letter. */
const room = { left: 9, right: 3, top: 5, bottom: 7.5 } as const;

const styles = `
  .body { fill: #f3e9d6; stroke: none }
  .row, .stake { fill: none; stroke: #a08a68; stroke-width: 0.25 }
  .edge { fill: none; stroke: #3a2f22; stroke-width: 0.7; stroke-linejoin: round }
  .finish { fill: #e5d3b0; stroke: #3a2f22; stroke-width: 0.5; stroke-linejoin: round }
  .table { fill: none; stroke: #7a6a54; stroke-width: 0.5 }
  .size { fill: none; stroke: #3a2f22; stroke-width: 0.3 }
  .mark { fill: #3a2f22; stroke: none }
  text { fill: #2a221a; font-family: sans-serif; paint-order: stroke; stroke: #fff; stroke-width: 0.8 }`;

/** An SVG document; one unit is a millimetre. */
export function outlinesSvg(basket: Basket): string {
  const views = (['side', 'end'] as const).map((view) => ({
    drawn: outline(basket, view),
    finish: flatFinish(basket, view),
  }));
  const letter = Math.max(3, 0.035 * Math.max(...views.map(({ drawn }) => drawn.width)));
  const high = Math.max(...views.map(({ drawn, finish }) => Math.max(drawn.top, finish.top)));
  const ground = room.top * letter + high;
  let left = 0;
  const figures = views.map(({ drawn, finish }) => {
    const x = left + room.left * letter - drawn.left;
    left = x + drawn.right + room.right * letter;
    return `<g transform="translate(${x.toFixed(2)} ${ground.toFixed(2)})">\n${figure(basket, drawn, finish, letter)}\n</g>`;
  });
  const [width, height] = [left.toFixed(2), (ground + room.bottom * letter).toFixed(2)];
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}">`,
    `<title>${escaped(basket.plan.name)}</title>`,
    `<style>${styles}\n</style>`,
    ...figures,
    '</svg>\n',
  ].join('\n');
}

function figure(
  { plan, summary }: Basket,
  drawn: Outline,
  finish: FlatFinish,
  letter: number,
): string {
  const text = (mm: number) => formatLength(mm, plan.display.unit);
  const isSide = drawn.view === 'side';
  const rim = drawn.rows.at(-1)?.line ?? [];
  const middle = ((rim[0] ?? 0) + (rim.at(-2) ?? 0)) / 2;
  const across = isSide ? summary.rim.length : summary.rim.width;
  const base = isSide ? summary.baseLength : summary.baseWidth;
  const { left, right, top } = drawn;
  const notes = [
    w.under[drawn.view](text(base)),
    ...(summary.centreClearance >= 1 ? [w.middleClear(text(summary.centreClearance))] : []),
  ];
  return [
    ...finish.handle.map((line) => pathSvg('finish', line, true)),
    pathSvg('body', drawn.silhouette, true),
    ...drawn.stakes.map(({ line }) => pathSvg('stake', line)),
    ...drawn.rows.map(({ line }) => pathSvg('row', line)),
    pathSvg('edge', drawn.silhouette, true),
    pathSvg('finish', finish.hoop, true),
    pathSvg('table', drawn.table),
    dimensionSvg(
      [left - 2.5 * letter, 0],
      [left - 2.5 * letter, drawn.wall],
      w.wall(text(drawn.wall)),
      letter,
    ),
    dimensionSvg(
      [middle - across / 2, top + 1.6 * letter],
      [middle + across / 2, top + 1.6 * letter],
      w.rim(text(across)),
      letter,
    ),
    dimensionSvg(
      [left, -2.6 * letter],
      [right, -2.6 * letter],
      w.widest(text(drawn.width)),
      letter,
    ),
    textSvg([(left + right) / 2, -5.6 * letter], notes.join(' · '), letter),
  ].join('\n');
}
