import type { KeyboardEvent } from 'react';
import { girthLineWords } from '#words/girthLine.ts';
import { steppedLength } from '../plan/lengthStep.ts';
import { limits } from '../plan/limits.ts';
import type { Unit } from '../plan/schema.ts';
import { formatLength, unitLength } from '../plan/units.ts';
import type { ChartFrame } from './chartFrame.ts';
import { xOf, yOf } from './chartFrame.ts';
import type { Handle } from './handles.ts';
import { reach } from './useGirthPointer.ts';

export interface GirthHandleProps {
  readonly handle: Handle;
  readonly frame: ChartFrame;
  readonly unit: Unit;
  readonly isChosen: boolean;
  /** What follows the point, such as `pulls in 3/16 in a row after it`; may be empty. */
  readonly after: string;
  readonly onChoose: (handle: Handle) => void;
  readonly onMove: (handle: Handle, row: number, girth: number) => void;
  readonly onAdd: (handle: Handle) => void;
  readonly onRemove: (handle: Handle) => void;
}

/** One point of the line, or one row set by hand: a slider for the keyboard and the screen reader. */
export function GirthHandle(props: GirthHandleProps) {
  const { handle, frame, unit, isChosen, after } = props;
  const { kind, row, girth } = handle;
  const words = girthLineWords.handle;
  const length = formatLength(girth, unit);
  const inUnit = (mm: number) => Math.round((mm / unitLength[unit]) * 1e4) / 1e4;
  const onKeyDown = (event: KeyboardEvent) => {
    const act = keyAct(event, handle, unit);
    if (!act) return;
    event.preventDefault();
    event.stopPropagation();
    if (act === 'add') props.onAdd(handle);
    else if (act === 'remove') props.onRemove(handle);
    else props.onMove(handle, act.row, act.girth);
  };
  return (
    <g
      className={`girth-handle girth-handle-${kind}${isChosen ? ' girth-handle-chosen' : ''}`}
      transform={`translate(${xOf(frame, girth).toFixed(1)} ${yOf(frame, row).toFixed(1)})`}
      data-handle={handle.key}
      tabIndex={0}
      role="slider"
      aria-label={words[kind](row)}
      aria-orientation="horizontal"
      aria-valuemin={inUnit(limits.girth.least)}
      aria-valuemax={inUnit(limits.girth.most)}
      aria-valuenow={inUnit(girth)}
      aria-valuetext={after ? words.valueAndAfter(row, length, after) : words.value(row, length)}
      onFocus={() => props.onChoose(handle)}
      onKeyDown={onKeyDown}
    >
      <circle className="girth-reach" r={reach} />
      <circle className="girth-halo" r={12} />
      {kind === 'point' ? (
        <circle className="girth-mark" r={6.5} />
      ) : (
        <rect className="girth-mark" x={-5} y={-5} width={10} height={10} transform="rotate(45)" />
      )}
    </g>
  );
}

type Act = 'add' | 'remove' | { readonly row: number; readonly girth: number } | undefined;

function keyAct({ key, shiftKey }: KeyboardEvent, { row, girth }: Handle, unit: Unit): Act {
  switch (key) {
    case 'ArrowLeft':
      return { row, girth: steppedLength(girth, unit, -1, shiftKey) };
    case 'ArrowRight':
      return { row, girth: steppedLength(girth, unit, 1, shiftKey) };
    case 'ArrowUp':
      return { row: row + 1, girth };
    case 'ArrowDown':
      return { row: row - 1, girth };
    case 'Insert':
    case 'a':
      return 'add';
    case 'Delete':
    case 'Backspace':
      return 'remove';
    default:
      return undefined;
  }
}
