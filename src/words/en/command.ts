/** What the headless command says. Names of its options, files and formats stay as they are. */
export const commandWords = {
  usage: `Settles a basket plan and writes its chart, without a browser.

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
`,
  wrongLine: (message: string, usage: string) => `sheet: ${message}\n\n${usage}`,
  failed: (file: string, why: string) => `sheet: ${file}: ${why}\n`,

  line: {
    paper: (found: string, papers: readonly string[]) =>
      `--paper: found "${found}", allowed is ${papers.join(' or ')}`,
    baskets: (found: string) =>
      `--baskets: found "${found}", allowed is a whole number from 1 to 200`,
    date: (found: string) => `--date: found "${found}", allowed is a day as YYYY-MM-DD`,
    noFile: 'FILE: found nothing, allowed is the path of a design document',
    moreFiles: (count: number) => `FILE: found ${count} paths, allowed is one`,
    emptyOut: '--out: found an empty name, allowed is the path of a folder',
    nothingAsked: 'found no --out, --json or --time, allowed is at least one of them',
    jsonAndTime: '--json and --time: found both, allowed is one: each fills the output',
  },

  /** A file that is not read: what was found, and what is allowed. */
  file: {
    notUtf8: 'bytes that are not UTF-8',
    utf8: 'a design document in UTF-8',
    readable: 'a file that can be read',
    missing: 'no such file',
    folder: 'a folder',
    forbidden: 'a file that may not be read',
  },
};
