/** Whether two documents say the same; their keys are in one order, that of the schema. */
export function isSame(one: unknown, other: unknown): boolean {
  return one === other || JSON.stringify(one) === JSON.stringify(other);
}
