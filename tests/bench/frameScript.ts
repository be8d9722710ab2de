/** Time that scripts take on the page's main thread from frame to frame, from a trace of Chromium's. */
import type { Page } from 'playwright-core';

/** An event of the trace: times in microseconds. */
interface TraceEvent {
  readonly name: string;
  readonly ph: string;
  readonly pid: number;
  readonly tid: number;
  readonly ts: number;
  readonly dur?: number;
  readonly args?: { readonly name?: string };
}

/** Scripts, and the clearing up after them that holds them up. */
const script = /^(FunctionCall|v8\.callFunction|EvaluateScript|RunMicrotasks|MinorGC|MajorGC)$/;

/** As few as tell frames and scripts: to trace more takes time itself. */
const categories = ['devtools.timeline', 'disabled-by-default-devtools.timeline'] as const;

/** Runs `act` and tells the script time of each frame that the page handed on meanwhile, ms. */
export async function frameScripts(page: Page, act: () => Promise<void>): Promise<number[]> {
  const browser = page.context().browser();
  if (!browser) throw new Error('a trace is taken of a browser');
  await browser.startTracing(page, { categories: [...categories] });
  await act();
  const trace = JSON.parse((await browser.stopTracing()).toString('utf8'));
  return scriptsByFrame((trace as { traceEvents: TraceEvent[] }).traceEvents);
}

function scriptsByFrame(events: readonly TraceEvent[]): number[] {
  // Chromium may keep a second renderer ready, which does next to nothing
  const [onMain = []] = events
    .filter(({ name, args }) => name === 'thread_name' && args?.name === 'CrRendererMain')
    .map((main) =>
      events.filter(({ ph, pid, tid }) => ph === 'X' && pid === main.pid && tid === main.tid),
    )
    .toSorted((one, other) => other.length - one.length);
  onMain.sort((one, other) => one.ts - other.ts);
  const frames = onMain.filter(({ name }) => name === 'Commit').map(({ ts }) => ts);
  const sums = frames.slice(1).map(() => 0);
  let frame = 0;
  let end = 0;
  for (const { name, ts, dur = 0 } of onMain) {
    // what runs inside another is in its time already
    if (!script.test(name) || ts < end) continue;
    end = ts + dur;
    while ((frames[frame + 1] ?? Number.POSITIVE_INFINITY) <= ts) frame += 1;
    if (ts >= (frames[0] ?? 0) && frame < sums.length)
      sums[frame] = (sums[frame] ?? 0) + dur / 1000;
  }
  if (sums.length === 0) throw new Error('the trace has no frames');
  return sums;
}
