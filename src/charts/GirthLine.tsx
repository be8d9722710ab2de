import { useEffect, useMemo, useRef, useState } from 'react';
import type { Basket } from '../model/basket.ts';
import type { Plan } from '../plan/schema.ts';
import { chartFrame } from './chartFrame.ts';
import { GirthAxes } from './GirthAxes.tsx';
import { GirthHandle } from './GirthHandle.tsx';
import { GirthHead } from './GirthHead.tsx';
import { GirthLines } from './GirthLines.tsx';
import { GirthReadout } from './GirthReadout.tsx';
import { restingGirth } from './girthStep.ts';
import type { Handle } from './handles.ts';
import { handlesOf } from './handles.ts';
import { PointEditor } from './PointEditor.tsx';
import { PointedRow } from './PointedRow.tsx';
import { StretchNotes } from './StretchNotes.tsx';
import { stretches, stretchPhrase } from './stretches.ts';
import { useChartSize } from './useChartSize.ts';
import type { ChangePlan } from './useGirthEdits.ts';
import { useGirthEdits } from './useGirthEdits.ts';
import { useGirthPointer } from './useGirthPointer.ts';
import './charts.css';

export interface GirthLineProps {
  readonly plan: Plan;
  /** Planned girth by row, mm, from `girthLine(plan)`; index 0 is the base. */
  readonly girths: Float64Array;
  readonly basket: Basket | null;
  /** Row pointed at, here or elsewhere. */
  readonly row: number | null;
  readonly onRow: (row: number | null) => void;
  readonly onChange: ChangePlan;
}

/** A press this near to the line adds a point that leaves the line as it is, px. */
const onTheLine = 12;

/** The girth line as a chart: rows go up and girth goes out, like half the basket's outline. */
export function GirthLine({ plan, girths, basket, row, onRow, onChange }: GirthLineProps) {
  const { unit } = plan.display;
  const rows = girths.length - 1;
  const [box, size] = useChartSize({ width: 360, height: 420 });
  const [chosenKey, setChosenKey] = useState<string | null>(null);
  const wanted = useRef<string | null>(null);
  const keys = useRef(0);
  const edits = useGirthEdits(plan, onChange);

  const tape = useMemo(
    () => Float64Array.from(basket?.rows.slice(0, rows) ?? [], (read) => read.tapeGirth),
    [basket, rows],
  );
  const handles = useMemo(() => handlesOf(plan.girthLine, rows), [plan.girthLine, rows]);
  const parts = useMemo(
    () => stretches(girths[0] ?? 0, plan.girthLine.points, rows),
    [girths, plan.girthLine.points, rows],
  );
  const roomy = useMemo(
    () => chartFrame(size.width, size.height, rows, [...girths, ...tape.filter(Number.isFinite)]),
    [size, rows, girths, tape],
  );
  const chosen = handles.find(({ key }) => key === chosenKey) ?? null;

  useEffect(() => {
    if (wanted.current === null) return;
    focusHandle(box.current, wanted.current);
    wanted.current = null;
  });

  const choose = (handle: Handle) => setChosenKey(handle.key);
  const point = (to: number | null) => {
    if (to !== row) onRow(to);
  };
  const add = (at: number, girth: number) => {
    const key = edits.add(at, girth);
    wanted.current = key;
    if (key !== null) setChosenKey(key);
  };
  const addAfter = (handle: Handle | null) => {
    const at = freeRow(
      plan.girthLine.points.map((one) => one.row),
      handle?.row ?? 0,
      rows,
    );
    if (at !== null) add(at, girths[at] ?? 0);
  };
  const remove = (handle: Handle) => {
    edits.remove(handle);
    const key = keyAfterRemoval(handles, handle);
    wanted.current = key;
    setChosenKey(key);
  };
  const step = (handle: Handle, to: number, girth: number) => {
    edits.move(handle, to, girth, `${handle.key}-keys-${keys.current}`);
    point(Math.min(handle.highest, Math.max(handle.lowest, to)));
  };
  const { frame, isDragging, listeners } = useGirthPointer({
    frame: roomy,
    handles,
    onGrab: (handle) => {
      choose(handle);
      focusHandle(box.current, handle.key);
    },
    onMove: (handle, to, girth, drag) => edits.move(handle, to, restingGirth(girth, unit), drag),
    onAdd: (at, girth) => {
      const line = girths[Math.max(1, at)] ?? girth;
      const pixel = (roomy.most - roomy.least) / (roomy.right - roomy.left);
      add(
        Math.max(1, at),
        Math.abs(girth - line) < onTheLine * pixel ? line : restingGirth(girth, unit),
      );
    },
    onRemove: remove,
    onRow: point,
  });

  return (
    <figure className="girth">
      <GirthHead
        handle={chosen}
        canRemove={chosen?.kind === 'hand' || plan.girthLine.points.length > 1}
        onAdd={() => addAfter(chosen)}
        onRemove={remove}
      />
      <GirthReadout row={row} planned={girths} tape={tape} unit={unit} />
      <div className="girth-box" ref={box}>
        <svg
          className={isDragging ? 'girth-drawing girth-dragging' : 'girth-drawing'}
          width={size.width}
          height={size.height}
          viewBox={`0 0 ${size.width} ${size.height}`}
          onBlur={() => {
            keys.current += 1;
          }}
          {...listeners}
        >
          <title>Girth line: rows go up, girth goes out to the right</title>
          <svg aria-hidden="true">
            <GirthAxes frame={frame} unit={unit} />
            <GirthLines frame={frame} planned={girths} tape={tape} />
            <StretchNotes
              frame={frame}
              planned={girths}
              tape={tape}
              stretches={parts}
              unit={unit}
            />
            {row !== null && row <= rows && (
              <PointedRow
                frame={frame}
                row={row}
                planned={girths[row] ?? Number.NaN}
                tape={tape[row - 1] ?? Number.NaN}
              />
            )}
          </svg>
          {handles.map((handle) => {
            const after = parts.find((part) => part.from === handle.row && handle.kind === 'point');
            return (
              <GirthHandle
                key={handle.key}
                handle={handle}
                frame={frame}
                unit={unit}
                isChosen={handle.key === chosenKey}
                after={after ? `${stretchPhrase(after, unit)} after it` : ''}
                onChoose={choose}
                onMove={step}
                onAdd={addAfter}
                onRemove={remove}
              />
            );
          })}
        </svg>
      </div>
      <PointEditor
        handle={chosen}
        unit={unit}
        onMove={(handle, to, girth, stepped) =>
          stepped ? step(handle, to, girth) : edits.move(handle, to, girth)
        }
      />
      <p className="girth-hint">
        Drag a point. Press twice on the line to add one, twice on a point to take it away. Keys:
        arrows move, A adds, Delete removes.
      </p>
    </figure>
  );
}

/** A row without a point, in the middle of the widest free stretch above `after`, or below it. */
function freeRow(taken: readonly number[], after: number, rows: number): number | null {
  const above = taken.find((row) => row > after) ?? rows + 1;
  if (above - after > 1) return Math.floor((after + above) / 2);
  for (let row = rows; row >= 1; row--) if (!taken.includes(row)) return row;
  return null;
}

/** Key, once `gone` is removed, of the handle that takes over the focus: the point below, or the first. */
function keyAfterRemoval(handles: readonly Handle[], gone: Handle): string | null {
  if (gone.kind === 'point')
    return handles.length > 1 ? `point-${Math.max(0, gone.index - 1)}` : null;
  return handles.find(({ key }) => key !== gone.key)?.key ?? null;
}

function focusHandle(box: HTMLElement | null, key: string): void {
  const handle = box?.querySelector<SVGElement>(`[data-handle="${key}"]`);
  handle?.focus({ preventScroll: true });
}
