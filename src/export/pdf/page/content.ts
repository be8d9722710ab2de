/**
 * Marks as a PDF content stream. Written as one text: a picture has some ten thousand strokes, and
 * an object for each of them took a second.
 */
import type { Ink, LineMark, Mark, TextMark } from './mark.ts';

/** A font as it is named on a page. */
export interface Typeface {
  /** With its slash: `/Regular-1`. */
  readonly key: string;
  /** `text` as a string of the PDF, with its brackets. */
  readonly encoded: (text: string) => string;
}

const points = 72 / 25.4;

/** The operators that draw `marks` on a page `height` mm high. */
export function contentOf(
  marks: readonly Mark[],
  height: number,
  regular: Typeface,
  bold: Typeface,
): string {
  // What the page was told last is not told again.
  const told = { fill: '', stroke: '', width: '', dash: '[] 0 d' };
  const tell = (what: keyof typeof told, how: string): string => {
    if (told[what] === how) return '';
    told[what] = how;
    return `${how}\n`;
  };
  const drawnLine = (mark: LineMark): string => {
    const { fill, stroke, width, dash, points: flat, closed } = mark;
    let out = fill ? tell('fill', `${channels(fill)} rg`) : '';
    if (stroke) {
      out += tell('stroke', `${channels(stroke)} RG`);
      out += tell('width', `${fine(width * points)} w`);
      out += tell('dash', `[${dash.map((length) => fine(length * points)).join(' ')}] 0 d`);
    }
    for (let at = 0; at + 1 < flat.length; at += 2) {
      out += `${across(flat[at] ?? 0)} ${up(flat[at + 1] ?? 0)} ${at === 0 ? 'm' : 'l'}\n`;
    }
    const alone = fill ? 'f' : 'S';
    const paint = fill && stroke ? 'B' : alone;
    return `${out}${closed ? 'h\n' : ''}${paint}\n`;
  };
  const drawnText = ({ x, y, text, size, ink, turn, bold: isBold }: TextMark): string => {
    const face = isBold ? bold : regular;
    const angle = (turn * Math.PI) / 180;
    const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
    const matrix = [fine(cos), fine(sin), fine(-sin), fine(cos), across(x), up(y)].join(' ');
    return (
      `${tell('fill', `${channels(ink)} rg`)}BT\n${face.key} ${size} Tf\n${matrix} Tm\n` +
      `${face.encoded(text)} Tj\nET\n`
    );
  };
  const across = (x: number) => fine(x * points);
  const up = (y: number) => fine((height - y) * points);
  return `1 J\n1 j\n${marks
    .map((mark) => (mark.kind === 'line' ? drawnLine(mark) : drawnText(mark)))
    .join('')}`;
}

/** To a thousandth of a point: a three-thousandth of a millimetre. */
function fine(value: number): number {
  return Math.round(value * 1000) / 1000 + 0;
}

function channels(ink: Ink): string {
  const value = Number.parseInt(ink.slice(1), 16);
  return [value >> 16, (value >> 8) & 255, value & 255]
    .map((channel) => Math.round((channel / 255) * 1000) / 1000)
    .join(' ');
}
