export interface RowSpan {
  readonly first: number;
  readonly last: number;
}

/** Rows in any order, some perhaps twice, as runs of neighbours from the base up. */
export function rowSpans(rows: readonly number[]): readonly RowSpan[] {
  const spans: RowSpan[] = [];
  for (const row of [...new Set(rows)].sort((a, b) => a - b)) {
    const before = spans.at(-1);
    if (before && before.last === row - 1) spans[spans.length - 1] = { ...before, last: row };
    else spans.push({ first: row, last: row });
  }
  return spans;
}
