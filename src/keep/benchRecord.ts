/** What is kept of one basket on the bench: where it stands, what was measured, what is aimed at. */
import { limits } from '../plan/limits.ts';
import type { Across } from '../plan/schema.ts';

export interface BenchRecord {
  readonly id: string;
  readonly name: string;
  /** The row being woven, from 1; one more than there are when all are done. */
  readonly row: number;
  /** Tape girth by row, mm. */
  readonly girths: Readonly<Record<string, number>>;
  /** Length and width by row, mm outside. */
  readonly across: Readonly<Record<string, Across>>;
  /** Height over the table to the top of a row, mm, as last measured. */
  readonly height: { readonly row: number; readonly height: number } | null;
  /** Rows to take to come back to the plan; null for all that are left. */
  readonly backOver: number | null;
  readonly keepsBelly: boolean;
  /** Tape girth the rim is to have, mm; null for the plan's. */
  readonly rim: number | null;
  /** How far the rows to come may go: lean, degrees from the vertical, and change in a gap, mm; null for the usual. */
  readonly limits: { readonly lean: number; readonly perGap: number } | null;
  /** Rows added at the top, and the last row that was woven then. */
  readonly added: { readonly from: number; readonly rows: number } | null;
  /** Girths taken over from a replan, by row from the base, mm in the middle of the wall. */
  readonly taken: readonly number[] | null;
}

/** A basket that has not been begun, or whose measurements came with the plan. */
export function newRecord(id: string, name: string, girths: BenchRecord['girths']): BenchRecord {
  const last = Math.max(0, ...Object.keys(girths).map(Number));
  return {
    id,
    name,
    row: last + 1,
    girths,
    across: {},
    height: null,
    backOver: null,
    keepsBelly: true,
    rim: null,
    limits: null,
    added: null,
    taken: null,
  };
}

/** A record from what was kept, whatever was kept: what cannot be read is as in a new one. */
export function readRecord(kept: unknown, id: string, name: string): BenchRecord {
  const value = fields(kept);
  const girths = Object.fromEntries(
    Object.entries(fields(value.girths)).filter(
      (entry): entry is [string, number] => isRow(entry[0]) && isLength(entry[1]),
    ),
  );
  const fresh = newRecord(text(value.id) ?? id, text(value.name) ?? name, girths);
  const height = fields(value.height);
  const added = fields(value.added);
  return {
    ...fresh,
    across: Object.fromEntries(Object.entries(fields(value.across)).flatMap(readAcross)),
    row: isCount(value.row) ? Math.max(1, value.row) : fresh.row,
    height:
      isCount(height.row) && isLength(height.height)
        ? { row: height.row, height: height.height }
        : null,
    backOver: isCount(value.backOver) && value.backOver > 0 ? value.backOver : null,
    keepsBelly: value.keepsBelly !== false,
    rim: isLength(value.rim) ? value.rim : null,
    limits: readLimits(fields(value.limits)),
    added:
      isCount(added.from) && Number.isInteger(added.rows) && added.rows !== 0
        ? { from: added.from, rows: added.rows as number }
        : null,
    taken: Array.isArray(value.taken) && value.taken.every(isLength) ? value.taken : null,
  };
}

function readAcross([row, kept]: [string, unknown]): [string, Across][] {
  const { length, width } = fields(kept);
  const across: Across = {
    ...(isAcross(length) ? { length } : {}),
    ...(isAcross(width) ? { width } : {}),
  };
  return isRow(row) && Object.keys(across).length > 0 ? [[row, across]] : [];
}

function readLimits({ lean, perGap }: Readonly<Record<string, unknown>>): BenchRecord['limits'] {
  const isAngle = typeof lean === 'number' && lean > 0 && lean < 90;
  return isAngle && isLength(perGap) ? { lean, perGap } : null;
}

function fields(value: unknown): Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null ? { ...value } : {};
}

function text(value: unknown): string | undefined {
  return typeof value === 'string' && value.length > 0 && value.length <= 60 ? value : undefined;
}

function isCount(value: unknown): value is number {
  return typeof value === 'number' && Number.isInteger(value) && value >= 0 && value <= 1000;
}

function isLength(value: unknown): value is number {
  return typeof value === 'number' && value > 0 && value < 20_000;
}

function isAcross(value: unknown): value is number {
  const { least, most } = limits.across;
  return typeof value === 'number' && value >= least && value <= most;
}

function isRow(key: string): boolean {
  return /^[1-9]\d{0,3}$/.test(key);
}
