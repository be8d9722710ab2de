/** A history as the row of plans it goes through, and back. */
import type { Plan } from '../../plan/schema.ts';
import { planVersion } from '../../plan/schema.ts';
import type { History, Step } from '../history.ts';
import type { StateRecord, TabRecord } from './records.ts';

/** A plan of the row, and what was done to come to it from the one before. */
export type State = Pick<StateRecord, 'id' | 'plan' | 'label'>;

export interface StateRow {
  /** Place of the first, counted from the tab's beginning. */
  readonly first: number;
  /** Place of the present one. */
  readonly cursor: number;
  readonly states: readonly State[];
}

/** The plans that a history goes through, the oldest first. */
export function stateRow({ plan, id, first, past, future }: History): StateRow {
  const labels = ['', ...past.map(({ label }) => label)];
  const plans = [...past, { plan, id }];
  const before = plans.map((one, at) => ({ ...pick(one), label: labels[at] ?? '' }));
  const after = future.toReversed().map((one) => ({ ...pick(one), label: one.label }));
  return { first, cursor: first + past.length, states: [...before, ...after] };
}

/** The history that goes through a row of plans; null if the row has no present one. */
export function historyOf({ first, cursor, states }: StateRow): History | null {
  const at = cursor - first;
  const present = states[at];
  if (!present) return null;
  const step = (one: State, label: string): Step => ({ ...pick(one), label });
  const past = states.slice(0, at).map((one, index) => step(one, states[index + 1]?.label ?? ''));
  const future = states.slice(at + 1).map((one) => step(one, one.label));
  return { ...pick(present), first, past, future: future.toReversed(), growing: null };
}

/** The row of a tab from its records in order; null if they are not whole or not of this version. */
export function rowOf(tab: TabRecord, records: readonly StateRecord[]): StateRow | null {
  const isWhole = records.length === tab.last - tab.first + 1;
  if (!isWhole || !records.every(({ plan }) => isOfThisVersion(plan))) return null;
  const states = records.map(({ id, plan, label }) => ({ id, plan, label }));
  return { first: tab.first, cursor: tab.cursor, states };
}

/** The end of a row, from the first place in which it differs from an earlier one. */
export interface Tail {
  readonly from: number;
  readonly cursor: number;
  readonly states: readonly State[];
}

/** What is to be put behind `written` to make it `row`. */
export function tailOf(row: StateRow, written: StateRow | null): Tail {
  const first = row.first;
  let from = first;
  const isKept = (at: number) => {
    const old = written?.states[at - (written?.first ?? 0)];
    const now = row.states[at - first];
    return old && now && old.plan === now.plan && old.id === now.id && old.label === now.label;
  };
  while (isKept(from)) from += 1;
  return { from, cursor: row.cursor, states: row.states.slice(from - first) };
}

/** The row that `written` becomes with a tail; null if they do not meet. */
export function withTail(
  written: StateRow | null,
  { from, cursor, states }: Tail,
): StateRow | null {
  const first = written?.first ?? from;
  const before = written?.states.slice(0, Math.max(0, from - first)) ?? [];
  if (first + before.length !== from) return null;
  return { first, cursor, states: [...before, ...states] };
}

function pick({ plan, id }: { readonly plan: Plan; readonly id: string }) {
  return { plan, id };
}

function isOfThisVersion(plan: Plan | undefined): boolean {
  return plan?.format === 'girthline' && plan.version === planVersion;
}
