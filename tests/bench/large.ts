/**
 * Settles the large plan in a process of its own and prints, as JSON, its times and the most memory
 * that the process has held. Run by `bench.ts`.
 */
import { times } from '../../src/command/times.ts';
import { largePlan } from './plans.ts';

/** Memory that was held before any basket was settled: Node, the reader of TypeScript, our code. */
const before = process.memoryUsage.rss();
const measured = times(largePlan, 5);
const most = process.resourceUsage().maxRSS * 1024;
process.stdout.write(JSON.stringify({ ...measured, memoryBefore: before, memoryMost: most }));
