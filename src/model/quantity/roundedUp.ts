/** A length over a step by less than this is that step: sums of floating numbers are a hair off, mm. */
const hair = 0.05;

/** `length` rounded up to a whole number of `step`s, mm, so that nothing is cut too short. */
export function roundedUp(length: number, step: number): number {
  if (!(step > 0)) throw new RangeError(`step is ${step}, allowed a length over 0`);
  return Math.ceil((length - hair) / step) * step;
}
