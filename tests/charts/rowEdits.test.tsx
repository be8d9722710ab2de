import type { KeyboardEvent, ReactElement, ReactNode } from 'react';
import { Children, isValidElement } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { expect, test } from 'vitest';
import { RowLine } from '../../src/charts/RowLine.tsx';
import type { RowEdits } from '../../src/charts/rowEdits.ts';
import { rowEdits } from '../../src/charts/rowEdits.ts';
import type { TableRow } from '../../src/charts/tableRows.ts';
import { tableRows } from '../../src/charts/tableRows.ts';
import { girthLine } from '../../src/model/girth/girthLine.ts';
import { demos } from '../../src/plan/demo/demos.ts';
import { setRowByHand } from '../../src/plan/edit.ts';
import type { Plan } from '../../src/plan/schema.ts';

interface Input {
  readonly onKeyDown: (event: Partial<KeyboardEvent>) => void;
}
type Draw = (props: unknown) => ReactNode;

/** The first `input` under `node`, its components called as React calls them: there is no page here. */
function inputUnder(node: ReactNode): Input | null {
  for (const child of Children.toArray(node)) {
    if (!isValidElement(child)) continue;
    const { type, props } = child as ReactElement<{ readonly children?: ReactNode }>;
    if (type === 'input') return props as unknown as Input;
    const draw = (typeof type === 'object' ? Reflect.get(type, 'type') : type) as Draw | string;
    const found = inputUnder(typeof draw === 'string' ? props.children : draw(props));
    if (found) return found;
  }
  return null;
}

interface PageProps {
  readonly line: TableRow;
  readonly edits: RowEdits;
  readonly onInput: (input: Input | null) => void;
}

function Page({ line, edits, onInput }: PageProps) {
  onInput(inputUnder(<RowLine line={line} unit="in" isPointed={false} isActive edits={edits} />));
  return null;
}

/** A plan, and the field of one of its rows as it was drawn before any key was pressed. */
function desk(start: Plan, row: number) {
  let plan = start;
  const edits = rowEdits(() => ({
    present: () => plan,
    onChange: (next) => {
      plan = next;
    },
  }));
  const line = tableRows(plan, girthLine(plan), null)[row - 1] as TableRow;
  let input: Input | null = null;
  const onInput = (found: Input | null) => {
    input = found;
  };
  renderToStaticMarkup(<Page line={line} edits={edits} onInput={onInput} />);
  return {
    press: (key: string) =>
      (input as Input | null)?.onKeyDown({ key, shiftKey: false, preventDefault() {} }),
    girth: () => plan.girthLine.rows[row],
  };
}

test('keys pressed faster than the chart is drawn take a step each', () => {
  const { press, girth } = desk(setRowByHand(demos[0].plan, 10, 20 * 25.4), 10);
  for (let pressed = 0; pressed < 4; pressed += 1) press('ArrowUp');
  expect(girth()).toBeCloseTo(20.25 * 25.4, 4);
  press('ArrowDown');
  expect(girth()).toBeCloseTo((20 + 3 / 16) * 25.4, 4);
});

test('the first key steps from the girth line, the next from the row that it has set by hand', () => {
  const start = demos[0].plan;
  const { press, girth } = desk(start, 10);
  const onLine = girthLine(start)[10] ?? Number.NaN;
  press('ArrowUp');
  const first = girth() ?? Number.NaN;
  expect(Math.abs(first - onLine - 25.4 / 16)).toBeLessThanOrEqual(25.4 / 32);
  press('ArrowUp');
  expect((girth() ?? Number.NaN) - first).toBeCloseTo(25.4 / 16, 4);
});
