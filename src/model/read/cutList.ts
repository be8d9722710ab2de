/** What to cut before the first row is woven. */
import { partWords } from '#words/parts.ts';
import { matSize } from '../../plan/baseSize.ts';
import type { Plan } from '../../plan/schema.ts';
import type { CutPart } from '../basket.ts';
import type { Net } from '../net/net.ts';
import { baseLength, pairedEnd, stakeAt } from './stakes.ts';

/**
 * Stakes by part, lengths mm: what lies in the base, and the wall and the tuck at each end that goes up. A
 * stake that is split is cut like its neighbours and named on a line of its own; one added beside another
 * runs from the middle of the base up one side. Fillers of a mat lie between its stakes and stay in the base.
 */
export function cutList(plan: Plan, net: Net): CutPart[] {
  const wall = net.rows.reduce((sum, { pitch }) => sum + pitch, 0);
  const { section, width } = plan.base.stake;
  const side = wall + plan.allowances.tuck;
  const pair = pairedEnd(net);
  const host = pair >= 0 ? stakeAt(net, net.ends[pair]!.nodes[0]!) : null;
  const second = pair >= 0 ? net.stakes[net.ends[pair]!.stake] : null;
  const list: CutPart[] = [];
  const add = (part: string, length: number) => {
    const same = list.findIndex(
      (line) => line.part === part && Math.abs(line.length - length) < 0.01,
    );
    const line = list[same];
    if (line) list[same] = { ...line, count: line.count + 1 };
    else list.push({ part, count: 1, length, section, width });
  };
  for (const stake of net.stakes) {
    if (stake === second) continue;
    const ups = stake.ends.filter((end) => end >= 0).length;
    const name = partWords.stakes[stake.part];
    const isSplit = stake === host && plan.oddEnd.kind === 'split';
    add(isSplit ? partWords.splitStake(name) : name, baseLength(stake) + ups * side);
  }
  if (host && plan.oddEnd.kind === 'added') {
    add(partWords.stakes.added, baseLength(host) / 2 + side);
  }
  return [...list, ...fillers(plan)];
}

function fillers({ base }: Plan): CutPart[] {
  if (base.kind !== 'mat' || !base.fillers) return [];
  const { length, width } = matSize(base);
  const line = (way: 'lengthwise' | 'crosswise', long: number): CutPart => ({
    part: partWords.fillers[way],
    count: base.fillers?.[way] ?? 0,
    length: long,
    section: base.stake.section,
    width: base.stake.width,
  });
  return [line('lengthwise', length), line('crosswise', width)].filter(({ count }) => count > 0);
}
