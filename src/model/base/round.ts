import type { Side } from '../net/net.ts';
import type { BaseMirror } from './basePart.ts';

/**
 * Angles of `ends` ends evenly round a circle, counter-clockwise from the west end of the south side. One
 * faces north; an even number is its own mirror image in x = 0 and y = 0, an odd one in x = 0.
 */
export function evenAngles(ends: number): Float64Array {
  const step = (2 * Math.PI) / ends;
  const off = ends % 2 === 0 ? 0 : 0.5;
  const first = Math.ceil(-ends / 8 - off - 1e-9);
  return Float64Array.from({ length: ends }, (_, e) => -Math.PI / 2 + (first + e + off) * step);
}

/** The side an angle faces. */
export function sideOf(angle: number): Side {
  const turned = ((angle + (3 * Math.PI) / 4) % (2 * Math.PI)) / (Math.PI / 2);
  return (['south', 'east', 'north', 'west'] as const)[Math.min(3, Math.floor(turned + 1e-9))]!;
}

/** The end at the mirror image of each angle, or null where an image has no end. */
export function angleImages(angles: Float64Array, across: 'x' | 'y'): number[] | null {
  const images = Array.from(angles, (angle) => {
    const image = across === 'x' ? Math.PI - angle : -angle;
    return angles.findIndex((other) => Math.abs(Math.sin((other - image) / 2)) < 1e-6);
  });
  return images.includes(-1) ? null : images;
}

/** Mirror of ring nodes that carry the same ends as the places: node = ring start + place. */
export function ringMirror(
  place: readonly number[] | null,
  node: (image: readonly number[]) => readonly number[] | null,
): BaseMirror | null {
  if (!place) return null;
  const images = node(place);
  return images ? { node: images, place } : null;
}
