/** The basket in a few figures. (`!`: lists that are never empty.) */
import { baseGirth, baseSize } from '../../plan/baseSize.ts';
import type { Plan } from '../../plan/schema.ts';
import type { Measured, RowReading, Settling, StakeReading } from '../basket.ts';
import type { Net } from '../net/net.ts';
import { capacity } from './capacity.ts';
import { footing } from './footing.ts';
import { centreOfMass } from './mass.ts';
import type { RowCurve } from './smoothRow.ts';
import { tipAngle } from './tipAngle.ts';
import { underside } from './underside.ts';

/** What the summary is made from. */
export interface Read {
  readonly plan: Plan;
  readonly net: Net;
  readonly positions: Float64Array;
  readonly mass: Float64Array;
  readonly curves: readonly RowCurve[];
  readonly rows: readonly RowReading[];
  readonly stakes: readonly StakeReading[];
  readonly settling: Settling;
}

/** Height is that of the highest stake where the wall ends; the rim is the last row. */
export function summary(read: Read): Measured['summary'] {
  const { plan, net, positions, curves, rows, stakes, settling } = read;
  const { length, width } = baseSize(plan.base);
  const { contacts, feet, footHeight, centreClearance } = footing(plan, net, positions);
  const belly = rows.reduce((widest, row) => (row.tapeGirth > widest.tapeGirth ? row : widest));
  const rim = rows.at(-1)!;
  return {
    ends: net.ends.length,
    rows: rows.length,
    baseGirth: baseGirth(plan.base),
    baseLength: length,
    baseWidth: width,
    height: stakes.reduce((top, { path }) => Math.max(top, path.at(-1)![2]), 0),
    belly: { row: belly.row, tapeGirth: belly.tapeGirth },
    rim: { tapeGirth: rim.tapeGirth, length: rim.length, width: rim.width },
    footHeight,
    centreClearance,
    feet,
    capacity: capacity(plan, net, positions, stakes, curves),
    tipAngle: tipping(read, contacts),
    // Each row takes up a strip of its girth, one pitch high.
    wallArea: rows.reduce(
      (area, { row, girthReached }) => area + girthReached * net.rows[row]!.pitch,
      0,
    ),
    iterations: settling.iterations,
    worstGirthError: settling.worstGirthError,
    worstStakeStretch: settling.worstStakeStretch,
  };
}

function tipping({ plan, net, positions, mass }: Read, contacts: readonly number[]): number {
  const lower = Float64Array.from(positions);
  const under = underside(plan, net, positions);
  for (let node = 0; node < under.length; node++) lower[3 * node + 2] = under[node]!;
  return tipAngle(lower, centreOfMass(mass, positions), contacts);
}
