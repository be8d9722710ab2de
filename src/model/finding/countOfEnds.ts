import type { Band } from '../../plan/schema.ts';
import type { Finding } from '../basket.ts';
import type { Find } from './family.ts';
import { named } from './family.ts';

/** What is wrong with a count of ends, in one weave; null where nothing is. */
type Judge = (ends: number) => Pick<Finding, 'severity' | 'text'> | null;

const odd = (ends: number) => ends % 2 === 1;

/**
 * Plain weaves go over one and under one. One weaver that goes on and on must meet each stake on the
 * other side next time round, so it needs an odd count; a row that closes on itself, and two weavers
 * that chase one another, need an even one. A twill over two and under two repeats every four.
 */
const judges: Record<Band['weave'], Judge> = {
  continuous: (ends) =>
    odd(ends)
      ? null
      : {
          severity: 'stop',
          text:
            `one weaver that goes round and round needs an odd count of ends, and there are ${ends}: ` +
            'every row would repeat the one below. Split a stake or add one, chase two weavers, or ' +
            'weave rows that start and stop.',
        },
  rounds: (ends) => (odd(ends) ? closing(ends, 'rows that start and stop') : null),
  chased: (ends) => (odd(ends) ? closing(ends, 'two weavers that chase one another') : null),
  twined: () => null,
  twill: (ends) => {
    if (odd(ends)) return null;
    if (ends % 4 === 2) {
      return {
        severity: 'warn',
        text:
          `a twill over two and under two steps two stakes a row on ${ends} ends (two left over from ` +
          'fours), so no diagonal appears. Split a stake or add one: an odd count steps by one.',
      };
    }
    return {
      severity: 'stop',
      text:
        `a twill over two and under two repeats the row below on ${ends} ends (none left over from ` +
        'fours). Split a stake or add one: an odd count steps by one.',
    };
  },
};

/** Bands whose weave does not go with the count of ends. */
export const countOfEnds: Find = ({ plan, net }) => {
  const ends = net.ends.length;
  let before = 0;
  return plan.bands.flatMap(({ rows: count, weave }): Finding[] => {
    const rows = Array.from({ length: count }, (_, i) => before + i + 1);
    before += count;
    const judged = judges[weave](ends);
    if (!judged) return [];
    const text = `${named(rows)}: ${judged.text}`;
    const row = rows[0] ?? null;
    return [{ kind: 'count-of-ends', ...judged, row, rows, value: ends, limit: ends + 1, text }];
  });
};

function closing(ends: number, what: string): Pick<Finding, 'severity' | 'text'> {
  return {
    severity: 'stop',
    text:
      `${what} need an even count of ends, and there are ${ends}: over and under would not meet. ` +
      'Leave the odd end out, or weave with one weaver that goes round and round.',
  };
}
