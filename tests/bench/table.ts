/** What was measured, its value, its unit, and the most it should be where there is such a figure. */
export type Line = readonly [what: string, value: number, unit: string, most: number | null];

/** The lines under one another, with a mark where a value is over its limit. */
export function table(lines: readonly Line[]): string {
  const wide = Math.max(...lines.map(([what]) => what.length));
  return lines
    .map(([what, value, unit, most]) => {
      const number = value.toFixed(value < 100 ? 2 : 0).padStart(10);
      const limit = most === null ? '' : `  at most ${most}${value <= most ? '' : '  OVER'}`;
      return `${what.padEnd(wide)} ${number} ${unit.padEnd(5)}${limit}`.trimEnd();
    })
    .map((line) => `${line}\n`)
    .join('');
}
