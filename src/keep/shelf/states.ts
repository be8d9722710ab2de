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

/** The history of a tab from its records in order; null if they are not whole or not of this version. */
export function historyOf(tab: TabRecord, records: readonly StateRecord[]): History | null {
  const isWhole = records.length === tab.last - tab.first + 1;
  const at = tab.cursor - tab.first;
  const present = records[at];
  if (!isWhole || !present || !records.every(({ plan }) => isOfThisVersion(plan))) return null;
  const step = (one: StateRecord, label: string): Step => ({ ...pick(one), label });
  const past = records.slice(0, at).map((one, index) => step(one, records[index + 1]?.label ?? ''));
  const future = records.slice(at + 1).map((one) => step(one, one.label));
  return { ...pick(present), first: tab.first, past, future: future.toReversed(), growing: null };
}

function pick({ plan, id }: { readonly plan: Plan; readonly id: string }) {
  return { plan, id };
}

function isOfThisVersion(plan: Plan | undefined): boolean {
  return plan?.format === 'girthline' && plan.version === planVersion;
}
