import { findingWords } from '#words/findings.ts';
import { weaveWords } from '#words/weaves.ts';
import type { Plan, Weave } from '../../plan/schema.ts';
import type { CountFit } from '../../plan/weaveFacts.ts';
import { countFit, twillStep } from '../../plan/weaveFacts.ts';
import type { Finding } from '../basket.ts';
import type { Find } from './family.ts';
import { named } from './family.ts';

const { count: says, diagonal } = findingWords;

/** Bands whose weave does not go with the count of ends; and the way a twill's diagonal climbs. */
export const countOfEnds: Find = ({ plan, net }) => {
  const ends = net.ends.length;
  return stretchesOfOneWeave(plan).flatMap(({ rows, weave }): Finding[] => {
    const row = rows[0] ?? null;
    const about = { row, rows, value: ends };
    const fit = countFit(weave, ends);
    if (fit !== 'fits') {
      const severity = fit === 'no diagonal' ? 'warn' : 'stop';
      const text = misfitText(fit, weave, named(rows), ends);
      return [{ kind: 'count-of-ends', severity, ...about, limit: ends + 1, text }];
    }
    if (weave !== 'twill') return [];
    const climbs = twillStep(ends) === 1 ? diagonal.against : diagonal.along;
    const text = climbs(named(rows), ends);
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

/** What is said of the rows `where`, whose weave does not go with the count of ends. */
function misfitText(
  fit: Exclude<CountFit, 'fits'>,
  weave: Weave,
  where: string,
  ends: number,
): string {
  if (fit === 'no diagonal') return says.noDiagonal(where, ends);
  if (fit === 'unmet') return says.unmet(where, weaveWords.inSentence[weave], ends);
  return weave === 'twill'
    ? says.twillRepeats(where, ends)
    : says.repeats(where, weaveWords.inSentence[weave], ends);
}
