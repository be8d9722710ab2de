/** The headless command: `npm run --silent sheet -- FILE --out DIR`. See `options.ts`. */
import { commandWords } from '#words/command.ts';
import { rowsCsv } from '../export/rowsCsv.ts';
import { shapeJsonText } from '../export/shapeJson.ts';
import { settleBasket } from '../model/settleBasket.ts';
import type { Plan } from '../plan/schema.ts';
import { readDesign } from './designFile.ts';
import type { Options } from './options.ts';
import { readOptions } from './options.ts';
import { times } from './times.ts';
import { writeAll } from './writeAll.ts';

const done = 0;
const failed = 1;
const refused = 2;

process.exitCode = await run(process.argv.slice(2));

async function run(words: readonly string[]): Promise<number> {
  const reading = readOptions(words);
  if (reading.kind === 'help') {
    process.stdout.write(commandWords.usage);
    return done;
  }
  if (reading.kind === 'wrong') {
    process.stderr.write(commandWords.wrongLine(reading.message, commandWords.usage));
    return refused;
  }
  const design = readDesign(reading.options.file);
  if (!design.ok) {
    process.stderr.write(`${design.messages.join('\n')}\n`);
    return refused;
  }
  try {
    await sheet(design.plan, reading.options);
    return done;
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    process.stderr.write(commandWords.failed(reading.options.file, why));
    return failed;
  }
}

async function sheet(plan: Plan, options: Options): Promise<void> {
  const { out, json, time } = options;
  const basket = settleBasket(plan);
  const shape = shapeJsonText(basket);
  if (out !== undefined) {
    // The format libraries are only loaded when a file is asked for.
    const { printed } = await import('./printed.ts');
    const { shapes } = await import('./shapes.ts');
    writeAll(out, {
      'rows.csv': rowsCsv(basket),
      'shape.json': shape,
      ...(await printed(basket, options)),
      ...(await shapes(basket)),
    });
  }
  if (json) process.stdout.write(shape);
  if (time) process.stdout.write(`${JSON.stringify(times(plan), null, 2)}\n`);
}
