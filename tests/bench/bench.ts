/**
 * `npm run bench`: how fast the app is on this machine. A table goes to the error output for the eye,
 * and JSON to the output: `npm run --silent bench > bench.json`. The app must have been built.
 */
import { spawnSync } from 'node:child_process';
import { cpus } from 'node:os';
import { fileURLToPath } from 'node:url';
import { times } from '../../src/command/times.ts';
import { settlePlan } from '../../src/model/settle/settlePlan.ts';
import type { EditTimes } from './editTimes.ts';
import { editTimes } from './editTimes.ts';
import { loadTimes } from './loadTimes.ts';
import { plainSettle } from './plainReference.ts';
import { demoPlan } from './plans.ts';
import { replanTimes } from './replanTimes.ts';
import { scriptSizes } from './scripts.ts';
import { shelfTimes } from './shelfTimes.ts';
import type { Line } from './table.ts';
import { table } from './table.ts';

const megabyte = 1e6;
const project = new URL('../../', import.meta.url);

const demo = times(demoPlan, 20);
const replan = replanTimes(demoPlan, 20);
const large = inOwnProcess('tests/bench/large.ts');
const page = await editTimes();
const load = { handedOver: await loadTimes(false), drawn: await loadTimes(true) };
const shelf = await shelfTimes();
const scripts = scriptSizes(new URL('dist/', project), page.scripts);
const plain = plainSettle(demoPlan, {
  goal: settlePlan(demoPlan).work.x,
  within: 0.1,
  mostEvaluations: 200_000,
});

const sizeOf = (one: { ends: number; rows: number }) => `${one.ends} ends, ${one.rows} rows`;
const at = { demo: sizeOf(demo), large: sizeOf(large) };
process.stderr.write(
  table([
    [`settle cold, ${at.demo}`, demo.settleColdMs, 'ms', 40],
    [`settle warm, ${at.demo}`, demo.settleWarmMs, 'ms', 8],
    [`reading off, ${at.demo}`, demo.readMs, 'ms', null],
    [`mesh in a drag, ${at.demo}`, demo.meshMs, 'ms', 4],
    [`strands and finish at rest, ${at.demo}`, demo.strandsMs, 'ms', 12],
    [`replan, ${at.demo}`, replan.replanMs, 'ms', null],
    [`replan and new shape after a measurement, ${at.demo}`, replan.bothMs, 'ms', 100],
    ['  the slowest of them', replan.slowestMs, 'ms', null],
    [`settle cold, ${at.large}`, large.settleColdMs, 'ms', 1200],
    [`settle warm, ${at.large}`, large.settleWarmMs, 'ms', 120],
    [`mesh in a drag, ${at.large}`, large.meshMs, 'ms', null],
    [`strands and finish at rest, ${at.large}`, large.strandsMs, 'ms', 120],
    [`most memory, ${at.large}`, large.memoryMost / megabyte, 'MB', 300],
    ['  of that before settling', large.memoryBefore / megabyte, 'MB', null],
    ...editLines('first drag', page.first),
    ...editLines('later drag', page.later),
    ...editLines('first drag with two plans shown', page.besideFirst, 60),
    ...editLines('later drag with two plans shown', page.besideLater, 60),
    ['load to first basket, cold', load.handedOver.cold, 'ms', 2000],
    ['load to first basket, from the service worker', load.handedOver.fromWorker, 'ms', 1000],
    ['  the same, drawn in software, cold', load.drawn.cold, 'ms', null],
    ['  from the service worker', load.drawn.fromWorker, 'ms', null],
    ['script on the page in a frame of a drag, 95 % under', page.frameScriptP95, 'ms', 8],
    ['  the same by the wall clock, waits for a core included', page.frameScriptWallP95, 'ms', 8],
    ['  the mean of all frames by the wall clock', page.frameScriptMean, 'ms', null],
    ['  all script of a drag over the shapes shown in it', page.later.scriptMean, 'ms', null],
    [`shelf of ${shelf.plans} plans opens, the first time`, shelf.first, 'ms', 300],
    ['  later, median', shelf.later, 'ms', 300],
    ...Object.entries(scripts).map(
      ([name, size]) => [`script ${name}, gzip`, size, 'kB', name === 'all' ? 500 : null] as const,
    ),
    [
      `plain reference, cold, ${plain.arrived ? 'to 0.1 mm' : `still ${plain.apart.toFixed(2)} mm off`}`,
      plain.milliseconds,
      'ms',
      null,
    ],
    ['plain reference over settle cold', plain.milliseconds / demo.settleColdMs, 'times', null],
  ]),
);
process.stdout.write(
  `${JSON.stringify(
    {
      node: process.version,
      processor: cpus()[0]?.model,
      demo,
      replan,
      large,
      page,
      load,
      shelf,
      scripts,
      plain,
    },
    (_, value) => (typeof value === 'number' ? Math.round(100 * value) / 100 : value),
    2,
  )}\n`,
);

function editLines(name: string, times: EditTimes, aim = 50): readonly Line[] {
  return [
    [`edit to picture, ${name}, median of ${times.shapes}`, times.pictureP50, 'ms', null],
    [`edit to picture, ${name}, 95 % under`, times.pictureP95, 'ms', aim],
    ['  of that in the worker, 95 % under', times.workerP95, 'ms', null],
    ['  of that in the frame, 95 % under', times.frameP95, 'ms', null],
  ];
}

/** What a file of the bench prints when it is run by itself. */
function inOwnProcess(file: string) {
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    ['node_modules/tsx/dist/cli.mjs', file],
    { cwd: fileURLToPath(project), encoding: 'utf8' },
  );
  if (status !== 0) throw new Error(`${file} failed: ${stderr}`);
  return JSON.parse(stdout) as ReturnType<typeof times> & {
    /** Bytes. */
    readonly memoryBefore: number;
    readonly memoryMost: number;
  };
}
