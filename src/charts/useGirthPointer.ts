import type { MouseEvent, PointerEvent } from 'react';
import { useEffect, useRef, useState } from 'react';
import type { ChartFrame } from './chartFrame.ts';
import { girthAt, rowAt, xOf, yOf } from './chartFrame.ts';
import type { Handle } from './handles.ts';
import { handleNear } from './handles.ts';

/** A finger covers about this much, px. */
export const reach = 20;

/** Two presses at one place within this time are a double press, ms and px. */
const doublePress = { time: 420, reach: 24 } as const;

/** What a pointer on the chart asks for. Rows are whole; girths are where the pointer is, mm. */
export interface GirthPointer {
  readonly frame: ChartFrame;
  readonly handles: readonly Handle[];
  readonly onGrab: (handle: Handle) => void;
  /** `drag` is another text for each drag. */
  readonly onMove: (handle: Handle, row: number, girth: number, drag: string) => void;
  readonly onAdd: (row: number, girth: number) => void;
  readonly onRemove: (handle: Handle) => void;
  readonly onRow: (row: number | null) => void;
}

interface Drag {
  readonly handle: Handle;
  /** From the pointer to the middle of the handle, px, so that it does not jump when grabbed. */
  readonly dx: number;
  readonly dy: number;
  readonly name: string;
}

/**
 * Pointer handling for the whole drawing. The frame is held still while a point is dragged, so that
 * the point stays under the finger; `frame` is the one to draw with.
 */
export function useGirthPointer(chart: GirthPointer) {
  const [heldFrame, setHeldFrame] = useState<ChartFrame | null>(null);
  const drag = useRef<Drag | null>(null);
  const box = useRef({ left: 0, top: 0 });
  const last = useRef({ time: Number.NEGATIVE_INFINITY, x: 0, y: 0 });
  const frame = heldFrame ?? chart.frame;
  const drawing = useRef<SVGSVGElement>(null);

  // Chromium ignores `touch-action` inside an SVG. A press comes before its touch, so that by now
  // it is known whether the finger holds a point; if not, the touch scrolls the page as ever.
  useEffect(() => {
    const svg = drawing.current;
    const keepFromScrolling = (event: TouchEvent) => {
      if (drag.current) event.preventDefault();
    };
    svg?.addEventListener('touchstart', keepFromScrolling, { passive: false });
    return () => svg?.removeEventListener('touchstart', keepFromScrolling);
  }, []);

  const isSecondPress = (time: number, x: number, y: number) => {
    const before = last.current;
    const isClose = Math.hypot(x - before.x, y - before.y) < doublePress.reach;
    const isDouble = time - before.time < doublePress.time && isClose;
    last.current = { time: isDouble ? Number.NEGATIVE_INFINITY : time, x, y };
    return isDouble;
  };

  const onPointerDown = (event: PointerEvent<SVGSVGElement>) => {
    if (event.button !== 0) return;
    box.current = event.currentTarget.getBoundingClientRect();
    const x = event.clientX - box.current.left;
    const y = event.clientY - box.current.top;
    const handle = handleNear(chart.handles, frame, x, y, reach);
    if (isSecondPress(event.timeStamp, x, y)) {
      if (handle) chart.onRemove(handle);
      else chart.onAdd(rowAt(frame, y), girthAt(frame, x));
      return;
    }
    if (!handle) return chart.onRow(rowAt(frame, y));
    event.currentTarget.setPointerCapture(event.pointerId);
    drag.current = {
      handle,
      dx: xOf(frame, handle.girth) - x,
      dy: yOf(frame, handle.row) - y,
      name: `hold-${handle.key}-${Math.round(event.timeStamp)}`,
    };
    setHeldFrame(frame);
    chart.onGrab(handle);
  };

  const onPointerMove = (event: PointerEvent<SVGSVGElement>) => {
    if (!drag.current) {
      if (event.pointerType === 'touch') return;
      box.current = event.currentTarget.getBoundingClientRect();
      return chart.onRow(rowAt(frame, event.clientY - box.current.top));
    }
    const { handle, dx, dy, name } = drag.current;
    const x = Math.min(frame.right, event.clientX - box.current.left + dx);
    const row = rowAt(frame, event.clientY - box.current.top + dy);
    const held = Math.min(handle.highest, Math.max(handle.lowest, row));
    chart.onMove(handle, held, girthAt(frame, x), name);
    chart.onRow(held);
  };

  const release = () => {
    drag.current = null;
    setHeldFrame(null);
  };

  return {
    drawing,
    frame,
    isDragging: heldFrame !== null,
    listeners: {
      onPointerDown,
      onPointerMove,
      onPointerUp: release,
      onPointerCancel: release,
      onPointerLeave: () => {
        if (!drag.current) chart.onRow(null);
      },
      // The handle that was grabbed has the focus already; the press must not move it elsewhere.
      onMouseDown: (event: MouseEvent) => {
        if (drag.current) event.preventDefault();
      },
    },
  };
}
