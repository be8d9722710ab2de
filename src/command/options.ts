/** What the headless command is told on its line. */
import { parseArgs } from 'node:util';
import type { Paper } from '../export/pdf/page/paper.ts';
import { papers } from '../export/pdf/page/paper.ts';

export interface Options {
  /** Path of the design file. */
  readonly file: string;
  /** Folder to write to; undefined writes nothing. */
  readonly out: string | undefined;
  readonly json: boolean;
  readonly time: boolean;
  /** Paper of the PDFs; undefined goes by the plan's unit. */
  readonly paper: Paper | undefined;
  /** Baskets that the materials are for. */
  readonly baskets: number;
  /** Day written on the PDFs; undefined is today. */
  readonly date: Date | undefined;
}

/** The options, a wish for help, or what is wrong with them. */
export type OptionsReading =
  | { readonly kind: 'options'; readonly options: Options }
  | { readonly kind: 'help' }
  | { readonly kind: 'wrong'; readonly message: string };

export const usage = `Settles a basket plan and writes its chart, without a browser.

  npm run --silent sheet -- FILE --out DIR   writes rows.csv, shape.json, sheet.pdf,
                                             gauges.pdf, shape.glb, shape.stl and
                                             outlines.svg to DIR
  npm run --silent sheet -- FILE --json      prints shape.json and nothing else
  npm run --silent sheet -- FILE --time      prints times as JSON, medians in ms
  npm run --silent sheet -- --help           prints this

FILE is a design document, NAME.girthline.json. --out goes with --json or --time. With --out:
  --paper a4|letter    paper of the PDFs; letter for a plan in inches, else a4
  --baskets N          baskets of a class that the sheet's materials are for, 1 to 200
  --date YYYY-MM-DD    day written on the PDFs; today

Ends with 0 when done; 2 for a plan that is refused or a line it cannot read, and then
nothing is written; 1 when a file could not be written or the plan could not be settled.
`;

/** Reads the words that follow the command. */
export function readOptions(words: readonly string[]): OptionsReading {
  const parsed = parsedWords(words);
  if (typeof parsed === 'string') return { kind: 'wrong', message: parsed };
  const { values, positionals } = parsed;
  if (values.help) return { kind: 'help' };
  const [file, ...more] = positionals;
  const { out, json, time } = values;
  const message = wrong(file, more, out, json, time);
  if (message || file === undefined) return { kind: 'wrong', message: message ?? '' };
  const print = printOptions(values);
  if (typeof print === 'string') return { kind: 'wrong', message: print };
  return { kind: 'options', options: { file, out, json, time, ...print } };
}

function parsedWords(words: readonly string[]) {
  try {
    return parseArgs({
      args: [...words],
      allowPositionals: true,
      options: {
        out: { type: 'string' },
        json: { type: 'boolean', default: false },
        time: { type: 'boolean', default: false },
        paper: { type: 'string' },
        baskets: { type: 'string', default: '1' },
        date: { type: 'string' },
        help: { type: 'boolean', short: 'h', default: false },
      },
    });
  } catch (error) {
    return error instanceof Error ? error.message : String(error);
  }
}

/** What is said of the PDFs, or what is wrong with it. */
function printOptions({
  paper,
  baskets,
  date,
}: {
  readonly paper?: string | undefined;
  readonly baskets: string;
  readonly date?: string | undefined;
}): Pick<Options, 'paper' | 'baskets' | 'date'> | string {
  const chosen = papers.find((one) => one === paper?.toLowerCase());
  if (paper !== undefined && !chosen) {
    return `--paper: found "${paper}", allowed is ${papers.join(' or ')}`;
  }
  const count = Number(baskets);
  if (!(Number.isInteger(count) && count >= 1 && count <= 200)) {
    return `--baskets: found "${baskets}", allowed is a whole number from 1 to 200`;
  }
  const day = date === undefined ? undefined : dayOf(date);
  if (day === null) return `--date: found "${date}", allowed is a day as YYYY-MM-DD`;
  return { paper: chosen, baskets: count, date: day };
}

/** The day at its beginning here, or null if there is no such day. */
function dayOf(text: string): Date | null {
  const [, year, month, day] = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text) ?? [];
  const date = new Date(Number(year), Number(month) - 1, Number(day));
  return date.getMonth() === Number(month) - 1 && date.getDate() === Number(day) ? date : null;
}

function wrong(
  file: string | undefined,
  more: readonly string[],
  out: string | undefined,
  json: boolean,
  time: boolean,
): string | undefined {
  if (file === undefined) return 'FILE: found nothing, allowed is the path of a design document';
  if (more.length) return `FILE: found ${more.length + 1} paths, allowed is one`;
  if (out === '') return '--out: found an empty name, allowed is the path of a folder';
  if (out === undefined && !json && !time) {
    return 'found no --out, --json or --time, allowed is at least one of them';
  }
  if (json && time) return '--json and --time: found both, allowed is one: each fills the output';
  return undefined;
}
