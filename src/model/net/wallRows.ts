import { baseCorners, baseGirth, isRound } from '../../plan/baseSize.ts';
import { bandOfRow, rowPitch } from '../../plan/counts.ts';
import type { Corners, Plan } from '../../plan/schema.ts';
import { secondMoment } from '../strand/section.ts';
import type { Layout } from './basketNet.ts';
import type { Row } from './net.ts';
import { endOutline } from './placedEnds.ts';
import { smoothLength } from './smoothLength.ts';
import type { BaseSpacing } from './spacing.ts';
import { cornerShare, rowSpacing } from './spacing.ts';

/** The rows, and what the start shape needs to know of them. */
export interface WallRows {
  /** Row 0 (the base's edge) to row R. */
  readonly rows: readonly Row[];
  /** x, y of each end on the outline, mm. */
  readonly outline: Float64Array;
  /** Wall height over which the outline turns into a circle (e-fold), mm. */
  readonly rounding: number;
}

/** Rows of `layout` with their girths, spacings and set. */
export function wallRows(layout: Layout, girths: ArrayLike<number>): WallRows {
  const { plan, base, ends, rows: R, edge, wall } = layout;
  const outline = endOutline(base, ends);
  const spacing = baseSpacing(layout, outline);
  const corners = baseCorners(plan.base);
  const bands = plan.bands.flatMap(({ rows }, band) => Array<number>(rows).fill(band));
  const places = base.places.length;
  const rows: Row[] = [
    {
      nodes: Int32Array.from(base.places, (_, place) => edge(place)),
      girth: girths[0] ?? 0,
      pitch: 0,
      stiffness: 0,
      spacing: placeSpacing(layout),
      grip: new Float64Array(places),
      hold: new Float64Array(places),
      cornerLength: spacing.cornerLength,
      band: -1,
    },
  ];
  let woven = 0;
  let free = 0;
  for (let k = 1; k <= R; k++) {
    const pitch = layout.pitch[k]!;
    const { weaver, weave } = plan.bands[bands[k - 1]!]!;
    const girth = girths[k] ?? 0;
    if (k <= corners.rows) free = woven + pitch;
    rows.push({
      nodes: consecutive(wall(k, 0), ends.length),
      girth,
      pitch,
      stiffness: secondMoment(weaver) * (weave === 'twined' ? 2 : 1),
      ...rowSpacing(spacing, corners, k, girth, woven + pitch / 2, free),
      hold: cornerHold(spacing, corners, k),
      band: bands[k - 1] ?? 0,
    });
    woven += pitch;
  }
  return { rows, outline, rounding: roundingLength(plan, spacing.girth, ends.length, R, 2) };
}

function consecutive(from: number, count: number): Int32Array {
  const nodes = new Int32Array(count);
  for (let i = 0; i < count; i++) nodes[i] = from + i;
  return nodes;
}

/** Straight distance from each place on the edge to the next. */
function placeSpacing({ base: { places } }: Layout): Float64Array {
  return Float64Array.from(places, ({ x, y }, p) => {
    const next = places[(p + 1) % places.length]!;
    return Math.hypot(next.x - x, next.y - y);
  });
}

/** Turn bent into the weaver at the two stakes of each corner: a share of π/4. */
function cornerHold(base: BaseSpacing, corners: Corners, row: number): Float64Array {
  const share = cornerShare(corners, row);
  const ends = base.chord.length;
  const turn = new Float64Array(ends);
  if (share === 0) return turn;
  base.corner.forEach((isCorner, j) => {
    if (!isCorner) return;
    turn[j] = (share * Math.PI) / 4;
    turn[(j + 1) % ends] = (share * Math.PI) / 4;
  });
  return turn;
}

function baseSpacing({ plan, base, ends, rows }: Layout, outline: Float64Array): BaseSpacing {
  const sharp = plan.base.kind === 'mat' || (plan.base.kind === 'board' && !isRound(plan.base));
  const E = ends.length;
  const corner = ends.map((end, j) => {
    const next = ends[(j + 1) % E]!;
    return sharp && base.places[end.place]?.side !== base.places[next.place]?.side;
  });
  const chord = Float64Array.from(ends, (_, j) => {
    const k = (j + 1) % E;
    return Math.hypot(outline[2 * k]! - outline[2 * j]!, outline[2 * k + 1]! - outline[2 * j + 1]!);
  });
  const flat = Float64Array.from({ length: 3 * E }, (_, i) =>
    i % 3 === 2 ? 0 : outline[2 * Math.floor(i / 3) + (i % 3)]!,
  );
  const girth = baseGirth(plan.base);
  return {
    chord,
    corner,
    pair: ends.findIndex((end, j) => end.place === ends[j + 1]?.place),
    girth,
    cornerLength: girth - smoothLength(flat, chord),
    evening: roundingLength(plan, girth, E, rows, 4),
  };
}

/**
 * Height over which mode n of the outline dies away up the wall, mm: 1/b of a beam on an elastic
 * foundation (Hetényi 1946; derived for rows on stakes in docs/shaping-model.md),
 * b⁴ = (n² − 1)²·B_w·c / (4·p·R⁴·B_s·(1 + 1/n²)).
 */
function roundingLength(plan: Plan, girth: number, ends: number, rows: number, n: number): number {
  const middle = Math.max(1, Math.ceil(rows / 2));
  const radius = girth / (2 * Math.PI);
  const spacing = girth / ends;
  const weaver = secondMoment(bandOfRow(plan, middle).weaver);
  const stake = secondMoment(plan.base.stake);
  const b4 =
    ((n * n - 1) ** 2 * weaver * spacing) /
    (4 * rowPitch(plan, middle) * radius ** 4 * stake * (1 + 1 / (n * n)));
  return b4 ** -0.25;
}
