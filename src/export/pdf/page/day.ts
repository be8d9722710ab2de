/** A date as it is read anywhere: `2026-03-09`, by the clock of the place. */
export function dayText(date: Date): string {
  const two = (value: number) => `${value}`.padStart(2, '0');
  return `${date.getFullYear()}-${two(date.getMonth() + 1)}-${two(date.getDate())}`;
}
