/** The weaver of each band: how much of it, in how many strands, and where they meet. */
import type { Plan } from '../../plan/schema.ts';
import { turnLength, weaveFacts } from '../../plan/weaveFacts.ts';
import type { Measured } from '../basket.ts';
import { helixCrimp, peirceCrimp } from './crimp.ts';
import type { Stock } from './part.ts';

type Weave = Plan['bands'][number]['weave'];

/** One band's weaver. Lengths mm. */
export interface WeaverNeed {
  /** Place of the band in the plan, from 0, and its rows. */
  readonly band: number;
  readonly first: number;
  readonly last: number;
  readonly weave: Weave;
  readonly stock: Stock;
  /** All of it, with crimp and laps, waste left out. */
  readonly length: number;
  /** Mean crimp, a share of the way. */
  readonly crimp: number;
  /** Strands at the usable length; for start-stop rows one a row, and more where a row needs them. */
  readonly strands: number;
  /** How far a new strand lies on the old one, and over how many stakes. */
  readonly lap: number;
  readonly lapStakes: number;
  /** Rows in which a strand of the usable length runs out, in order. */
  readonly spliceRows: readonly number[];
  /** For start-stop rows: the longest piece. */
  readonly piece: number | null;
  /** Lengths thinned at the very start and the very end of the weaving; null where there is none. */
  readonly startTaper: number | null;
  readonly endTaper: number | null;
}

/**
 * The end is thinned over a shorter stretch than the start: 5–6 in to 8–12 in. Common practice, no
 * source.
 */
const endTaperShare = 0.55;

/** Weavers by band, from the base up. */
export function weaverNeeds(basket: Measured): WeaverNeed[] {
  const { plan, rows } = basket;
  let last = 0;
  return plan.bands.map((band, index) => {
    const first = last + 1;
    last += band.rows;
    return weaverNeed(basket, index, rows.slice(first - 1, last));
  });
}

function weaverNeed({ plan, net }: Measured, band: number, rows: Measured['rows']): WeaverNeed {
  const own = plan.bands[band];
  const [first, last] = [rows[0], rows.at(-1)];
  if (!own || !first || !last) throw new RangeError(`band is ${band}, allowed one with rows`);
  const { weave, weaver, colour } = own;
  const ends = net.ends.length;
  const { splice, taper, usableStrand } = plan.allowances;
  const facts = weaveFacts[weave];
  const spirals = facts.climb > 0;
  let way = 0;
  const lengths = rows.map(({ row, girthReached }) => {
    const turn = turnLength(weave, girthReached, net.rows[row]?.pitch ?? 0);
    way += turn;
    return turn * (1 + crimp(weave, plan.base.stake.thickness, weaver.thickness, turn / ends));
  });
  const woven = lengths.reduce((sum, length) => sum + length, 0);
  const lap = Math.min((splice * way) / rows.length / ends, 0.9 * usableStrand);
  const runs = spirals
    ? spiralRuns(weave, lengths, lap, usableStrand)
    : roundRuns(lengths, lap, usableStrand);
  const { tapers } = facts;
  // A spiral that goes on from the band below is lapped on to it.
  const goesOn = tapers && isSpiral(plan.bands[band - 1]?.weave);
  const joins = runs.laps + (goesOn ? facts.weavers : 0);
  return {
    band,
    first: first.row,
    last: last.row,
    weave,
    stock: { ...weaver, colour },
    length: facts.strandsInRow * woven + joins * lap,
    crimp: woven / way - 1,
    strands: runs.strands,
    lap,
    lapStakes: splice,
    spliceRows: runs.rows.map((at) => first.row + at),
    piece: spirals ? null : Math.max(...lengths) + lap,
    startTaper: tapers && !goesOn ? taper : null,
    endTaper: tapers && !isSpiral(plan.bands[band + 1]?.weave) ? endTaperShare * taper : null,
  };
}

/** Weaves whose weaver climbs from row to row, and is thinned where it begins and ends. */
function isSpiral(weave: Weave | undefined): boolean {
  return weave !== undefined && weaveFacts[weave].tapers;
}

/** Only every other span of a 2/2 twill crosses the wall; the others lie flat. */
function crimp(weave: Weave, stake: number, weaver: number, spacing: number): number {
  const { path, period } = weaveFacts[weave];
  if (path === 'helix') return helixCrimp(stake, weaver, spacing);
  return (2 / period) * peirceCrimp((stake + weaver) / spacing);
}

/** Strands, laps and the rows (from 0) where one strand gives way to the next. */
interface Runs {
  readonly strands: number;
  readonly laps: number;
  readonly rows: readonly number[];
}

/**
 * Weavers that go on from row to row. Of two twined strands each goes the whole way; of two that
 * chase one another each weaves every other row.
 */
function spiralRuns(weave: Weave, lengths: readonly number[], lap: number, strand: number): Runs {
  if (weaveFacts[weave].weavers === 2) {
    const runs = [0, 1].map((turn) =>
      lengths.map((length, row) => (row % 2 === turn ? length : 0)),
    );
    const [one, other] = runs.map((own) => strandRun(own, lap, strand));
    return both(one, other);
  }
  const run = strandRun(lengths, lap, strand);
  return weaveFacts[weave].strandsInRow === 2 ? both(run, run) : run;
}

function both(one: Runs | undefined, other: Runs | undefined): Runs {
  const runs = [one, other].filter((run) => run !== undefined);
  const sum = (of: (run: Runs) => number) => runs.reduce((total, run) => total + of(run), 0);
  return {
    strands: sum(({ strands }) => strands),
    laps: sum(({ laps }) => laps),
    rows: [...new Set(runs.flatMap(({ rows }) => rows))].sort((a, b) => a - b),
  };
}

/** One strand after another through rows of these lengths. */
function strandRun(lengths: readonly number[], lap: number, strand: number): Runs {
  const total = lengths.reduce((sum, length) => sum + length, 0);
  const count = strandCount(total, lap, strand);
  const rows: number[] = [];
  let done = 0;
  let next = strand;
  lengths.forEach((length, row) => {
    done += length;
    while (done > next && rows.length < count - 1) {
      rows.push(row);
      next += strand - lap;
    }
  });
  return { strands: count, laps: count - 1, rows };
}

/** Start-stop rows: each is a piece of its own that laps itself. */
function roundRuns(lengths: readonly number[], lap: number, strand: number): Runs {
  const counts = lengths.map((length) => strandCount(length + lap, lap, strand));
  const strands = counts.reduce((sum, count) => sum + count, 0);
  return { strands, laps: strands, rows: counts.flatMap((count, row) => (count > 1 ? [row] : [])) };
}

/** Strands of length `strand`, each lapped on to the one before, that reach over `length`. */
function strandCount(length: number, lap: number, strand: number): number {
  if (length <= strand) return 1;
  return 1 + Math.ceil((length - strand) / (strand - lap));
}
