/** Pieces of an SVG drawing. Places are x, y in mm with y up; SVG's y goes down. */

type Place = readonly [number, number];

/** A line through x, y, x, y, …, closed or open. */
export function pathSvg(kind: string, line: readonly number[], isClosed = false): string {
  let path = '';
  for (let at = 0; at + 1 < line.length; at += 2) {
    path += `${at === 0 ? 'M' : 'L'}${(line[at] ?? 0).toFixed(2)},${(-(line[at + 1] ?? 0)).toFixed(2)}`;
  }
  return `<path class="${kind}" d="${path}${isClosed ? 'Z' : ''}"/>`;
}

/** `text` between two tags: signs of markup in it stay signs. */
export function escaped(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
}

/** Text whose middle stands at a place, upright or turned by a quarter. */
export function textSvg([x, y]: Place, text: string, letter: number, isTurned = false): string {
  const turn = isTurned ? ` transform="rotate(-90 ${x.toFixed(2)} ${(-y).toFixed(2)})"` : '';
  return `<text x="${x.toFixed(2)}" y="${(-y).toFixed(2)}" font-size="${letter.toFixed(2)}" text-anchor="middle"${turn}>${escaped(text)}</text>`;
}

/** A dimension line, level or upright, with a tip at each end and its text beside it. */
export function dimensionSvg(from: Place, to: Place, text: string, letter: number): string {
  const isUpright = from[0] === to[0];
  const tip = 0.7 * letter;
  const [wide, long] = [0.25 * tip, tip];
  const arrow = ([x, y]: Place, way: 1 | -1) =>
    isUpright
      ? [x, y, x - wide, y + way * long, x + wide, y + way * long]
      : [x, y, x + way * long, y - wide, x + way * long, y + wide];
  const middle: Place = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
  const beside: Place = isUpright
    ? [middle[0] - 0.5 * letter, middle[1]]
    : [middle[0], middle[1] + 0.5 * letter];
  return [
    pathSvg('size', [...from, ...to]),
    pathSvg('mark', arrow(from, 1), true),
    pathSvg('mark', arrow(to, -1), true),
    textSvg(beside, text, letter, isUpright),
  ].join('\n');
}
