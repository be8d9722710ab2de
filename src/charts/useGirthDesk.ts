import type { RefObject } from 'react';
import { useEffect, useRef, useState } from 'react';
import type { Plan } from '../plan/schema.ts';
import type { Handle } from './handles.ts';
import { freeRow, keyAfterRemoval } from './handles.ts';
import type { ChangePlan } from './useGirthEdits.ts';
import { useGirthEdits } from './useGirthEdits.ts';

export interface GirthDesk {
  readonly plan: Plan;
  /** Planned girth by row, mm; index 0 is the base. */
  readonly girths: Float64Array;
  readonly handles: readonly Handle[];
  /** The element that the handles are drawn in. */
  readonly box: RefObject<HTMLElement | null>;
  readonly onRow: (row: number) => void;
  readonly onChange: ChangePlan;
}

/** The chosen handle, and what can be done with it; the focus goes along with a new or removed one. */
export function useGirthDesk({ plan, girths, handles, box, onRow, onChange }: GirthDesk) {
  const [chosenKey, setChosenKey] = useState<string | null>(null);
  const wanted = useRef<string | null>(null);
  const run = useRef(0);
  const edits = useGirthEdits(plan, onChange);
  const chosen = handles.find(({ key }) => key === chosenKey) ?? null;

  useEffect(() => {
    if (wanted.current !== null) focusHandle(box.current, wanted.current);
    wanted.current = null;
  });

  const chooseAndFocus = (key: string | null) => {
    wanted.current = key;
    setChosenKey(key);
  };
  const add = (row: number, girth: number) => chooseAndFocus(edits.add(row, girth));

  return {
    chosen,
    choose: ({ key }: Handle) => setChosenKey(key),
    grab({ key }: Handle) {
      setChosenKey(key);
      focusHandle(box.current, key);
    },
    add,
    /** A point on the line as it is, between a handle and the next point above it. */
    addAfter(handle: Handle | null) {
      const row = freeRow(plan.girthLine.points, handle?.row ?? 0, girths.length - 1);
      if (row !== null) add(row, girths[row] ?? 0);
    },
    remove(handle: Handle) {
      edits.remove(handle);
      chooseAndFocus(keyAfterRemoval(handles, handle));
    },
    move: edits.move,
    /** A move by key or button: one run of them, until the focus goes, is undone at once. */
    step(handle: Handle, row: number, girth: number) {
      edits.move(handle, row, girth, `${handle.key}-keys-${run.current}`);
      onRow(Math.min(handle.highest, Math.max(handle.lowest, row)));
    },
    endRun() {
      run.current += 1;
    },
  };
}

function focusHandle(box: HTMLElement | null, key: string): void {
  box?.querySelector<SVGElement>(`[data-handle="${key}"]`)?.focus({ preventScroll: true });
}
