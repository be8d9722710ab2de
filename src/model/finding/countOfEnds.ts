import type { Plan, Weave } from '../../plan/schema.ts';
import type { CountFit } from '../../plan/weaveFacts.ts';
import { countFit, twillStep, weaveFacts } from '../../plan/weaveFacts.ts';
import type { Finding } from '../basket.ts';
import type { Find } from './family.ts';
import { named } from './family.ts';

type Misfit = Exclude<CountFit, 'fits'>;

/** What is said of a band whose weave does not go with the count of ends. */
const words: Readonly<Record<Misfit, (weave: Weave, ends: number) => string>> = {
  repeats: (weave, ends) =>
    weave === 'twill'
      ? `a twill over two and under two repeats the row below on ${ends} ends (none left over from ` +
        'fours). Split a stake or add one: an odd count steps by one.'
      : `${weaveFacts[weave].name} needs an odd count of ends, and there are ${ends}: every row would ` +
        'repeat the one below. Split a stake or add one, chase two weavers, or weave rows that start ' +
        'and stop.',
  unmet: (weave, ends) =>
    `${weaveFacts[weave].name} need an even count of ends, and there are ${ends}: over and under would ` +
    'not meet. Leave the odd end out, or weave with one weaver that goes round and round.',
  'no diagonal': (_weave, ends) =>
    `a twill over two and under two steps two stakes a row on ${ends} ends (two left over from fours), ` +
    'so no diagonal appears. Split a stake or add one: an odd count steps by one.',
};

/** Bands whose weave does not go with the count of ends; and the way a twill's diagonal climbs. */
export const countOfEnds: Find = ({ plan, net }) => {
  const ends = net.ends.length;
  return stretchesOfOneWeave(plan).flatMap(({ rows, weave }): Finding[] => {
    const row = rows[0] ?? null;
    const about = { row, rows, value: ends };
    const fit = countFit(weave, ends);
    if (fit !== 'fits') {
      const severity = fit === 'no diagonal' ? 'warn' : 'stop';
      const text = `${named(rows)}: ${words[fit](weave, ends)}`;
      return [{ kind: 'count-of-ends', severity, ...about, limit: ends + 1, text }];
    }
    if (weave !== 'twill') return [];
    const text = `${named(rows)}: ${diagonal(ends)}`;
    return [{ kind: 'twill-step', severity: 'note', ...about, limit: 4, text }];
  });
};

/** Rows by weave: bands that follow one another in one weave are taken together. */
function stretchesOfOneWeave({ bands }: Pick<Plan, 'bands'>) {
  const list: { readonly weave: Weave; readonly rows: number[] }[] = [];
  let before = 0;
  for (const { rows: count, weave } of bands) {
    const rows = Array.from({ length: count }, (_, i) => before + i + 1);
    before += count;
    const last = list.at(-1);
    if (last?.weave === weave) last.rows.push(...rows);
    else list.push({ weave, rows });
  }
  return list;
}

/** What `ends` modulo 4 gives on an odd count: 1 or 3. */
function diagonal(ends: number): string {
  const [over, way] = twillStep(ends) === 1 ? ['one', 'against'] : ['three', 'along with'];
  return (
    `on ${ends} ends (${over} left over from fours) the twill steps one stake a row, and its diagonal ` +
    `climbs ${way} the way the weaver goes.`
  );
}
