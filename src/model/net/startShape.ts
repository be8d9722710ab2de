import { smoothLength } from './smoothLength.ts';

/** What the start shape of a wall is swept from. Lengths mm. */
export interface Sweep {
  /** x, y of each end on the base's edge, in order. */
  readonly outline: Float64Array;
  /** Per row from 1: wall from the row before, target loop length, spacing, and wall height. */
  readonly rows: readonly {
    readonly step: number;
    readonly length: number;
    readonly spacing: Float64Array;
    readonly wall: number;
  }[];
  /** Wall height over which the outline turns into a circle (e-fold), mm. */
  readonly rounding: number;
}

/**
 * A kinematic sweep: each row is the base's outline blended towards a circle, scaled to its girth and
 * set one step of wall from the row before. Returns x, y, z for each end, row after row. It only
 * decides which of the balanced shapes is found; the settling moves every node from here.
 */
export function sweep({ outline, rows, rounding }: Sweep): Float64Array[] {
  const ends = outline.length / 2;
  let before = new Float64Array(3 * ends);
  for (let j = 0; j < ends; j++) {
    before[3 * j] = outline[2 * j] ?? 0;
    before[3 * j + 1] = outline[2 * j + 1] ?? 0;
  }
  let height = 0;
  return rows.map(({ step, length, spacing, wall }) => {
    const blend = 1 - Math.exp(-wall / rounding);
    const angles = circleAngles(spacing, outline);
    const loop = new Float64Array(3 * ends);
    const radius = length / (2 * Math.PI);
    for (let j = 0; j < ends; j++) {
      const angle = angles[j] ?? 0;
      loop[3 * j] = (1 - blend) * (outline[2 * j] ?? 0) + blend * radius * Math.cos(angle);
      loop[3 * j + 1] = (1 - blend) * (outline[2 * j + 1] ?? 0) + blend * radius * Math.sin(angle);
    }
    const scale = length / smoothLength(loop, spacing);
    let sideways = 0;
    for (let j = 0; j < ends; j++) {
      loop[3 * j] = (loop[3 * j] ?? 0) * scale;
      loop[3 * j + 1] = (loop[3 * j + 1] ?? 0) * scale;
      const dx = (loop[3 * j] ?? 0) - (before[3 * j] ?? 0);
      const dy = (loop[3 * j + 1] ?? 0) - (before[3 * j + 1] ?? 0);
      sideways += (dx * dx + dy * dy) / ends;
    }
    height += Math.sqrt(Math.max(step * step - sideways, 0.04 * step * step));
    for (let j = 0; j < ends; j++) loop[3 * j + 2] = height;
    before = loop;
    return loop;
  });
}

/** Angle of each end on a circle shared out by `spacing`, turned to lie best over the outline. */
function circleAngles(spacing: Float64Array, outline: Float64Array): Float64Array {
  const ends = spacing.length;
  const total = spacing.reduce((sum, length) => sum + length, 0);
  const angles = new Float64Array(ends);
  let along = 0;
  let turn = 0;
  let last = Math.atan2(outline[1] ?? 0, outline[0] ?? 0);
  for (let j = 0; j < ends; j++) {
    angles[j] = (2 * Math.PI * along) / total;
    along += spacing[j] ?? 0;
    // Unwrap the outline's own angle so that the mean difference means something.
    let own = Math.atan2(outline[2 * j + 1] ?? 0, outline[2 * j] ?? 0);
    while (own < last - Math.PI) own += 2 * Math.PI;
    while (own > last + Math.PI) own -= 2 * Math.PI;
    last = own;
    turn += (own - (angles[j] ?? 0)) / ends;
  }
  return angles.map((angle) => angle + turn);
}
