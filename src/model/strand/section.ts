import type { Strand } from '../net/net.ts';

/**
 * Cross-section of a strand, mm². Flat reed is a rectangle and round reed a circle; flat oval and
 * half round are taken as half an ellipse, flat side in (fills 79 % of its box; the trade's footage
 * tables give about 75 % for flat oval).
 */
export function sectionArea({ section, width, thickness }: Strand): number {
  if (section === 'flat') return width * thickness;
  if (section === 'round') return (Math.PI / 4) * width * thickness;
  return (Math.PI / 4) * width * thickness;
}

/**
 * Second moment of area about the weak axis, mm⁴: rectangle w·t³/12, ellipse π·w·t³/64, half ellipse
 * of width w and height t about its own centroid (π/8 − 8/9π)·(w/2)·t³. Textbook values, from memory.
 */
export function secondMoment({ section, width, thickness }: Strand): number {
  const cube = thickness ** 3;
  if (section === 'flat') return (width * cube) / 12;
  if (section === 'round') return (Math.PI / 64) * width * cube;
  return (Math.PI / 8 - 8 / (9 * Math.PI)) * (width / 2) * cube;
}
