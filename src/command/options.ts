/** What the headless command is told on its line. */
import { parseArgs } from 'node:util';
import { commandWords } from '#words/command.ts';
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

const says = commandWords.line;

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
    return says.paper(paper, papers);
  }
  const count = Number(baskets);
  if (!(Number.isInteger(count) && count >= 1 && count <= 200)) {
    return says.baskets(baskets);
  }
  const day = date === undefined ? undefined : dayOf(date);
  if (day === null) return says.date(`${date}`);
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
  if (file === undefined) return says.noFile;
  if (more.length) return says.moreFiles(more.length + 1);
  if (out === '') return says.emptyOut;
  if (out === undefined && !json && !time) return says.nothingAsked;
  if (json && time) return says.jsonAndTime;
  return undefined;
}
