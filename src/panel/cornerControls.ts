import { baseWords } from '#words/panelBase.ts';
import { cornerKinds } from '../plan/base.ts';
import { limits } from '../plan/limits.ts';
import type { CornerKind, Corners, MatBase } from '../plan/schema.ts';
import type { Control, Controls } from './control.ts';
import { choicesOf } from './control.ts';
import type { PlanEdits } from './usePlanEdits.ts';

const words = baseWords.corners;

/** Rows that a newly chosen kind of corner starts with. */
const firstRows: Readonly<Record<CornerKind, number>> = { pinned: 8, square: 0, fanned: 4 };

/** Kind and hold of a mat's corners, for a wall of `rows` rows. */
export function cornerControls(base: MatBase, rows: number, edits: PlanEdits): Controls {
  const { corners } = base;
  const set = (label: string, next: Corners, stepped = false) =>
    edits.base(label, { ...base, corners: next }, stepped);
  const { hold, holdRows } = corners;
  const kind: Control = {
    kind: 'choice',
    label: words.kind.label,
    word: 'corners',
    value: corners.kind,
    choices: choicesOf(cornerKinds, words.kinds),
    onCommit: (word) => {
      const chosen = cornerKinds.find((one) => one === word) ?? corners.kind;
      return set(words.kind.act, cornersOf(chosen, corners, rows));
    },
  };
  const held: Controls = {
    hold: {
      kind: 'share',
      label: words.hold.label,
      word: 'hold',
      share: hold,
      ...limits.cornerHold,
      onCommit: (share) => set(words.hold.act, { ...corners, hold: share }, true),
    },
    holdRows: {
      kind: 'count',
      label: words.holdRows.label,
      count: holdRows,
      least: 0,
      most: Math.max(rows, holdRows),
      onCommit: (count, stepped) =>
        set(words.holdRows.act, { ...corners, holdRows: count }, stepped),
    },
  };
  if (corners.kind === 'square') return { cornerKind: kind, ...held };
  const cornerRows: Control = {
    kind: 'count',
    label: words.rows[corners.kind],
    count: corners.rows,
    least: 0,
    most: Math.max(rows, corners.rows),
    onCommit: (count, stepped) => set(words.rows.act, { ...corners, rows: count }, stepped),
  };
  return { cornerKind: kind, cornerRows, ...held };
}

function cornersOf(kind: CornerKind, { hold, holdRows }: Corners, rows: number): Corners {
  if (kind === 'square') return { kind, rows: 0, hold, holdRows };
  return { kind, rows: Math.min(rows, firstRows[kind]), hold, holdRows };
}
