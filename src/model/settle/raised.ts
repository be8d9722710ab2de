/** A tension raised by `by`, within the cap either way. */
export function raised(tension: number, by: number, cap: number): number {
  return Math.max(-cap, Math.min(cap, tension + by));
}
