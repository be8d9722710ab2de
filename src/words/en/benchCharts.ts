/** The chart at the bench: the plan, and the basket as woven and still to come. */
export const benchChartWords = {
  keys: { plan: 'plan', woven: 'woven', next: 'to come', point: 'measured' },
  /** One row that was measured, for the description. */
  point: (row: number, girth: string, planned: string) =>
    `row ${row} measured ${girth}, planned ${planned}`,
  /** The chart in words, from what `point` gives. */
  picture: (points: readonly string[]) =>
    `Plan and basket: ${points.join('; ') || 'nothing measured yet'}`,
};
