/** Poppler's programs, by which the tests read PDFs independently of the code that wrote them. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { toolPath } from '../../../.config/tools.mjs';

type Program = 'pdftotext' | 'pdfinfo' | 'pdffonts' | 'pdftocairo';

/** What `program` says of the PDF in `bytes`; words before and after the file's name. */
function said(
  program: Program,
  bytes: Uint8Array,
  before: readonly string[],
  after: readonly string[],
) {
  const text = toolPath('pdftotext');
  if (!text) throw new Error('pdftotext is missing: install poppler-utils to run this test');
  const folder = mkdtempSync(join(tmpdir(), 'girthline-pdf-'));
  try {
    const file = join(folder, 'file.pdf');
    writeFileSync(file, bytes);
    const path = program === 'pdftotext' ? text : join(dirname(text), program);
    const { stdout, stderr, error } = spawnSync(path, [...before, file, ...after], {
      encoding: 'utf8',
      maxBuffer: 64_000_000,
    });
    if (error) throw new Error(`${path} cannot be run: install poppler-utils`, { cause: error });
    return { stdout, stderr };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** The text of the whole file, laid out as on the page or in the order it was written; pages parted by a form feed. */
export function pdfText(bytes: Uint8Array, as: 'layout' | 'raw' = 'layout'): string {
  return said('pdftotext', bytes, [`-${as}`], ['-']).stdout;
}

/** `pdfinfo`'s lines by their key; it must have nothing to complain of. */
export function pdfInfo(bytes: Uint8Array): ReadonlyMap<string, string> {
  const { stdout, stderr } = said('pdfinfo', bytes, [], []);
  if (stderr) throw new Error(stderr);
  return new Map(
    stdout
      .split('\n')
      .filter((line) => line.includes(':'))
      .map((line) => [line.slice(0, line.indexOf(':')), line.slice(line.indexOf(':') + 1).trim()]),
  );
}

/** One line a font: its name, and whether it is embedded, subset and readable as text. */
export function pdfFonts(bytes: Uint8Array) {
  const { stdout, stderr } = said('pdffonts', bytes, [], []);
  if (stderr) throw new Error(stderr);
  return stdout
    .trim()
    .split('\n')
    .slice(2)
    .map((line) => {
      const words = line.trim().split(/\s+/);
      const [embedded, subset, unicode] = words.slice(-5, -2);
      return { name: words[0] ?? '', embedded, subset, unicode };
    });
}

/**
 * A stroked path of a page: colour as `r,g,b` in 0 … 255, mm, y down from the page's foot. The
 * numbers are the PDF's own coordinates: poppler keeps them in the path and fits the whole page to
 * the SVG by a transform, which is left out here.
 */
export interface DrawnPath {
  readonly stroke: string | null;
  /** Of the stroke, mm. */
  readonly width: number;
  readonly points: readonly (readonly [number, number])[];
}

const millimetre = 25.4 / 72;

/** Paths of page `page` (from 1) as poppler draws them. */
export function drawnPaths(bytes: Uint8Array, page: number): DrawnPath[] {
  const one = ['-svg', '-f', `${page}`, '-l', `${page}`];
  const svg = said('pdftocairo', bytes, one, ['-']).stdout;
  return [...svg.matchAll(/<path ([^>]*)\/>/g)].flatMap(([, attributes = '']): DrawnPath[] => {
    const of = (name: string) =>
      new RegExp(`(?:^|[ ";])${name}[:=]"?([^";]*)`).exec(attributes)?.[1] ?? '';
    const stroke = colour(of('stroke'));
    if (!stroke) return [];
    const numbers = of('d').match(/-?\d+(?:\.\d+)?(?:e-?\d+)?/g) ?? [];
    const points: (readonly [number, number])[] = [];
    for (let at = 0; at + 1 < numbers.length; at += 2) {
      const [x, y] = [Number(numbers[at]), Number(numbers[at + 1])];
      points.push([millimetre * x, -millimetre * y]);
    }
    return [{ stroke, width: millimetre * Number(of('stroke-width')), points }];
  });
}

/** `rgb(12.1%, 14%, 15%)` as whole channels. */
function colour(text: string): string | null {
  const shares = text.match(/[\d.]+%/g);
  return shares
    ? shares.map((share) => Math.round(2.55 * Number.parseFloat(share))).join(',')
    : null;
}

/** The fonts that the command embeds. */
export function testFonts() {
  const font = (name: string) =>
    readFileSync(join(import.meta.dirname, '../../../node_modules/dejavu-fonts-ttf/ttf', name));
  return {
    regular: font('DejaVuSansCondensed.ttf'),
    bold: font('DejaVuSansCondensed-Bold.ttf'),
  };
}
