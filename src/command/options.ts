/** What the headless command is told on its line. */
import { parseArgs } from 'node:util';

export interface Options {
  /** Path of the design file. */
  readonly file: string;
  /** Folder to write to; undefined writes nothing. */
  readonly out: string | undefined;
  readonly json: boolean;
  readonly time: boolean;
}

/** The options, a wish for help, or what is wrong with them. */
export type OptionsReading =
  | { readonly kind: 'options'; readonly options: Options }
  | { readonly kind: 'help' }
  | { readonly kind: 'wrong'; readonly message: string };

export const usage = `Settles a basket plan and writes its chart, without a browser.

  npm run --silent sheet -- FILE --out DIR   writes rows.csv and shape.json to DIR
  npm run --silent sheet -- FILE --json      prints shape.json and nothing else
  npm run --silent sheet -- FILE --time      prints times as JSON, medians in ms
  npm run --silent sheet -- --help           prints this

FILE is a design document, NAME.girthline.json. --out goes with --json or --time.
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
  return { kind: 'options', options: { file, out, json, time } };
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
        help: { type: 'boolean', short: 'h', default: false },
      },
    });
  } catch (error) {
    return error instanceof Error ? error.message : String(error);
  }
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
