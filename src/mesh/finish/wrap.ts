/** The strip wound round the bow. */
import { partWords } from '#words/parts.ts';
import type { Strand as Stock } from '../../model/net/net.ts';
import { strandColour } from '../../plan/dyes.ts';
import { caneThickness } from '../../plan/strandSizes.ts';
import { arcPlace } from '../arc.ts';
import { field, stride } from '../crossings.ts';
import type { Strand } from '../strandMesh.ts';
import type { ArchPlace } from './arch.ts';
import type { Place } from './strandAlong.ts';
import { strandAlong } from './strandAlong.ts';
import { cross, minus, mix, plus, scaled, size, unit } from './vector.ts';

/** More turns than this are not told apart: then each is drawn wider. */
const mostTurns = 160;

/** Free between bow and wrap, mm: the strip rises a little on its way round. */
const free = 0.18;

/** A strip of `width` wound edge to edge round a bow, from its place `first` to its place `last`. */
export function wrapStrand(bow: Strand, first: number, last: number, width: number): Strand {
  const arch = drawnLine(bow, first, last);
  const ends = distances(arch);
  const length = ends.at(-1) ?? 0;
  const turns = Math.max(1, Math.min(mostTurns, Math.floor(length / width)));
  const thickness = caneThickness(width);
  const stock: Stock = { section: 'flat-oval', width: (0.95 * length) / turns, thickness };
  // once round the bow, half a thickness off each point of its section
  const { points, normals } = bow.section;
  const sides = points.length / 2;
  const off = thickness / 2 + free;
  const bowWidth = bow.path.data[first * stride + field.width] ?? 0;
  const placeOn = walk(arch, ends);
  const places = Array.from({ length: turns * sides }, (_, index): Place => {
    const { at, out, across } = placeOn((length * (index + 0.5)) / (turns * sides));
    const point = 2 * (index % sides);
    const [faceAside, faceUp] = [normals[point] ?? 0, normals[point + 1] ?? 0];
    const aside = (points[point] ?? 0) * bowWidth + faceAside * off;
    const up = (points[point + 1] ?? 0) * bow.thickness + faceUp * off;
    return {
      at: plus(plus(at, across, aside), out, up),
      face: unit(plus(scaled(across, faceAside), out, faceUp)),
    };
  });
  const colour = strandColour('bleached');
  return strandAlong(places, { name: partWords.handleWrap, stock, colour, seed: 95, between: 0 });
}

/** The middle line of a bow as it is drawn, with sections at its places and halfway between. */
function drawnLine({ path, between }: Strand, first: number, last: number): ArchPlace[] {
  const line: ArchPlace[] = [];
  for (let place = first; place < last; place += 1) {
    for (let piece = 0; piece <= between; piece += 1) {
      const { position, face } = arcPlace(path, place, place + 1, piece / (between + 1));
      line.push({ at: position, face });
    }
  }
  const { position, face } = arcPlace(path, last - 1, last, 1);
  return [...line, { at: position, face }];
}

/** How far along the line each of its places is, mm. */
function distances(line: readonly ArchPlace[]): number[] {
  let sum = 0;
  return line.map(({ at }, place) => {
    sum += size(minus(at, line[place - 1]?.at ?? at));
    return sum;
  });
}

/**
 * A walk along a line from its beginning: middle, direction out, and direction across, at a place mm on,
 * which is never before the last one asked for.
 */
function walk(line: readonly ArchPlace[], ends: readonly number[]) {
  let step = 1;
  return (along: number) => {
    while (step < line.length - 1 && (ends[step] ?? 0) < along) step += 1;
    const [from, to] = [line[step - 1] ?? nowhere, line[step] ?? nowhere];
    const [start, end] = [ends[step - 1] ?? 0, ends[step] ?? 0];
    const share = Math.min(1, (along - start) / (end - start || 1));
    const out = unit(mix(from.face, to.face, share));
    const across = unit(cross(out, minus(to.at, from.at)));
    return { at: mix(from.at, to.at, share), out, across };
  };
}

const nowhere: ArchPlace = { at: [0, 0, 0], face: [0, 0, 1] };
