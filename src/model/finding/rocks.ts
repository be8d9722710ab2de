import { findingWords } from '#words/findings.ts';
import { baseLift, baseSize, isRound } from '../../plan/baseSize.ts';
import { footing, touching } from '../read/footing.ts';
import type { Find } from './family.ts';
import { mm } from './family.ts';

/** It rocks when what touches the table is narrower than this share of the base. No source. */
const narrow = 0.6;

/** A basket that stands on the middle of its base while its corners or edge are in the air. A board is flat. */
export const rocks: Find = ({ plan, net, positions }) => {
  if (plan.base.kind === 'board') return [];
  const { hang, stance } = footing(plan, net, positions);
  const { length, width } = baseSize(plan.base);
  const limit = touching * Math.hypot(length, width);
  if (hang <= limit || Math.min(stance.length, stance.width) > narrow) return [];
  const lift = baseLift(plan.base);
  return [
    {
      kind: 'rocks',
      severity: 'warn',
      row: null,
      rows: [],
      value: hang,
      limit,
      text: findingWords.rocks(mm(hang), isRound(plan.base), lift > 0 ? mm(lift) : undefined),
    },
  ];
};
