/** A row and two planned girths there, mm. */
export interface PlannedApart {
  readonly row: number;
  readonly a: number;
  readonly b: number;
}

/** The first row of those both lines have where they lie farthest apart; null where they are the same. */
export function plannedApart(a: Float64Array, b: Float64Array): PlannedApart | null {
  let far: PlannedApart | null = null;
  let most = 0;
  for (let row = 1; row < Math.min(a.length, b.length); row += 1) {
    const [one = 0, other = 0] = [a[row], b[row]];
    const apart = Math.abs(other - one);
    if (apart <= most) continue;
    far = { row, a: one, b: other };
    most = apart;
  }
  return far;
}
