import { baseWords } from '#words/panelBase.ts';
import { boardShapes } from '../plan/boardBase.ts';
import { limits } from '../plan/limits.ts';
import type { BoardBase, Unit } from '../plan/schema.ts';
import type { Control, Controls, ControlWords } from './control.ts';
import { choicesOf } from './control.ts';
import type { LengthRange } from './lengthControl.ts';
import { lengthControl } from './lengthControl.ts';
import type { PlanEdits } from './usePlanEdits.ts';

const words = baseWords.board;

/** Shape and size of a board, and the stakes in its slot. */
export function boardControls(base: BoardBase, unit: Unit, edits: PlanEdits): Controls {
  const isRound = base.shape === 'round';
  const length = (
    { label, act }: ControlWords,
    mm: number,
    range: LengthRange,
    next: (mm: number) => BoardBase,
  ) => lengthControl(label, mm, unit, range, (to, stepped) => edits.base(act, next(to), stepped));
  const shape: Control = {
    kind: 'choice',
    label: words.shape.label,
    value: base.shape,
    choices: choicesOf(boardShapes, words.shapes),
    onCommit: (word) => edits.base(words.shape.act, shaped(base, word)),
  };
  const long = length(
    isRound ? words.across : words.length,
    base.length,
    limits.diameter,
    (mm) => ({
      ...base,
      length: mm,
    }),
  );
  const wide: Controls =
    base.shape === 'round'
      ? {}
      : {
          boardWidth: length(words.width, base.width, limits.diameter, (mm) => ({
            ...base,
            width: mm,
          })),
        };
  return {
    shape,
    boardLength: long,
    ...wide,
    ends: {
      kind: 'count',
      label: words.ends.label,
      word: 'stake',
      count: base.ends,
      least: limits.boardEnds.least,
      most: limits.ends.most,
      onCommit: (ends, stepped) => edits.base(words.ends.act, { ...base, ends }, stepped),
    },
    boardThickness: length(words.thickness, base.thickness, limits.boardThickness, (mm) => ({
      ...base,
      thickness: mm,
    })),
    slot: length(words.slot, base.slot, limits.gap, (mm) => ({ ...base, slot: mm })),
  };
}

/** A round board keeps its length; a rectangular one is cut as wide as it is long. */
function shaped(base: BoardBase, word: string): BoardBase {
  if (base.shape === word) return base;
  if (base.shape === 'round') return { ...base, shape: 'rectangle', width: base.length };
  const { width: _width, ...others } = base;
  return { ...others, shape: 'round' };
}
