/**
 * Time that scripts take on the page's main thread from frame to frame, from a trace of Chromium's: by the thread's
 * own clock, and by the wall's, which also counts while the thread waits for one of the machine's cores.
 */
import type { Page } from 'playwright-core';

/** An event of the trace: times in microseconds. */
interface TraceEvent {
  readonly name: string;
  readonly ph: string;
  readonly pid: number;
  readonly tid: number;
  readonly ts: number;
  readonly dur?: number;
  /** As `dur`, by the thread's own clock. */
  readonly tdur?: number;
  readonly args?: { readonly name?: string };
}

/** Scripts, and the clearing up after them that holds them up. */
const script = /^(FunctionCall|v8\.callFunction|EvaluateScript|RunMicrotasks|MinorGC|MajorGC)$/;

/** As few as tell frames and scripts: to trace more takes time itself. */
const categories = ['devtools.timeline', 'disabled-by-default-devtools.timeline'] as const;

/** Script time of each frame, ms. */
export interface FrameScripts {
  readonly thread: readonly number[];
  readonly wall: readonly number[];
}

/** Runs `act` and tells the script time of each frame that the page handed on meanwhile. */
export async function frameScripts(page: Page, act: () => Promise<void>): Promise<FrameScripts> {
  const browser = page.context().browser();
  if (!browser) throw new Error('a trace is taken of a browser');
  await browser.startTracing(page, { categories: [...categories] });
  await act();
  const trace = JSON.parse((await browser.stopTracing()).toString('utf8'));
  return scriptsByFrame((trace as { traceEvents: TraceEvent[] }).traceEvents);
}

function scriptsByFrame(events: readonly TraceEvent[]): FrameScripts {
  // Chromium may keep a second renderer ready, which does next to nothing
  const [onMain = []] = events
    .filter(({ name, args }) => name === 'thread_name' && args?.name === 'CrRendererMain')
    .map((main) =>
      events.filter(({ ph, pid, tid }) => ph === 'X' && pid === main.pid && tid === main.tid),
    )
    .toSorted((one, other) => other.length - one.length);
  onMain.sort((one, other) => one.ts - other.ts);
  const frames = onMain.filter(({ name }) => name === 'Commit').map(({ ts }) => ts);
  const wall = frames.slice(1).map(() => 0);
  const thread = frames.slice(1).map(() => 0);
  let frame = 0;
  let end = 0;
  for (const { name, ts, dur = 0, tdur = dur } of onMain) {
    // what runs inside another is in its time already
    if (!script.test(name) || ts < end) continue;
    end = ts + dur;
    while ((frames[frame + 1] ?? Number.POSITIVE_INFINITY) <= ts) frame += 1;
    if (ts < (frames[0] ?? 0) || frame >= wall.length) continue;
    wall[frame] = (wall[frame] ?? 0) + dur / 1000;
    thread[frame] = (thread[frame] ?? 0) + tdur / 1000;
  }
  if (wall.length === 0) throw new Error('the trace has no frames');
  return { thread, wall };
}
