/** The line of a bow from foot to foot. */
import type { Vector } from './vector.ts';
import { minus, plus, size } from './vector.ts';

/** A place of the bow's middle line with its unit direction away from the middle of the arch. */
export interface ArchPlace {
  readonly at: Vector;
  readonly face: Vector;
}

/** Pieces of the round part. */
const pieces = 20;

/**
 * A bow over two feet at about one height, `rise` high: straight legs and half a circle, or half an
 * ellipse where it is lower than half its span.
 */
export function archPlaces(from: Vector, to: Vector, rise: number): ArchPlace[] {
  const way = minus([to[0], to[1], 0], [from[0], from[1], 0]);
  const span = size(way);
  const [x, y] = [way[0] / (span || 1), way[1] / (span || 1)];
  const radius = span / 2;
  const legs = Math.max(0, rise - radius);
  const high = Math.min(rise, radius);
  const place = (level: number, up: number, faceLevel: number, faceUp: number): ArchPlace => {
    const foot = from[2] + (level / (span || 1)) * (to[2] - from[2]);
    const long = Math.hypot(faceLevel, faceUp) || 1;
    return {
      at: plus([from[0], from[1], 0], [x * level, y * level, foot + up]),
      face: [(x * faceLevel) / long, (y * faceLevel) / long, faceUp / long],
    };
  };
  const legAt = (level: number, face: number) =>
    legs > 8 ? [place(level, 0, face, 0), place(level, legs / 2, face, 0)] : [];
  const round = Array.from({ length: pieces + 1 }, (_, at) => {
    const angle = (Math.PI * at) / pieces;
    const [c, s] = [Math.cos(angle), Math.sin(angle)];
    // the normal of an ellipse
    return place(radius * (1 - c), legs + high * s, -c * high, s * radius);
  });
  return [...legAt(0, -1), ...round, ...legAt(span, 1).toReversed()];
}
