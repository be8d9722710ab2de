/** `value` to `places` decimals, never −0. A value that is not finite is a fault of the caller. */
export function rounded(value: number, places: number): number {
  if (!Number.isFinite(value)) throw new RangeError(`a number to write is finite, but is ${value}`);
  return Number(value.toFixed(places)) + 0;
}
