/** What to cut before the first row is woven. */
import type { Plan } from '../../plan/schema.ts';
import type { CutPart } from '../basket.ts';
import type { Net } from '../net/net.ts';
import { baseLength, hostOf } from './stakes.ts';

/**
 * Stakes by part, lengths mm: base + 2·(wall + tuck) for a stake that crosses the base. A stake that
 * is split is cut like its neighbours and named on a line of its own; an added one runs from the
 * middle of the base up one side.
 */
export function cutList(plan: Plan, net: Net): CutPart[] {
  const wall = net.rows.reduce((sum, { pitch }) => sum + pitch, 0);
  const { section, width } = plan.base.stake;
  const side = wall + plan.allowances.tuck;
  const added = net.stakes.find(({ part }) => part === 'added');
  const host = added ? hostOf(net, added.nodes[Math.max(...added.edge)] ?? 0) : null;
  const split = plan.oddEnd.kind === 'split' ? host : null;
  const list: CutPart[] = [];
  for (const part of ['lengthwise', 'crosswise'] as const) {
    const stakes = net.stakes.filter((stake) => stake.part === part);
    const first = stakes[0];
    if (!first) continue;
    const length = baseLength(first) + 2 * side;
    const own = split?.part === part ? 1 : 0;
    list.push({ part: `${part} stake`, count: stakes.length - own, length, section, width });
    if (own) {
      list.push({ part: `${part} stake, split at one end`, count: 1, length, section, width });
    }
  }
  if (host && !split) {
    const length = baseLength(host) / 2 + side;
    list.push({ part: 'added stake', count: 1, length, section, width });
  }
  return list.filter(({ count }) => count > 0);
}
