/** The strip wound round the bow. */
import { partWords } from '#words/parts.ts';
import type { Strand as Stock } from '../../model/net/net.ts';
import { strandColour } from '../../plan/dyes.ts';
import { caneThickness } from '../../plan/strandSizes.ts';
import type { Strand } from '../strandMesh.ts';
import type { ArchPlace } from './arch.ts';
import type { Place } from './strandAlong.ts';
import { strandAlong } from './strandAlong.ts';
import type { Vector } from './vector.ts';
import { cross, minus, mix, plus, scaled, size, unit } from './vector.ts';

/** More turns than this are not told apart: then each is drawn wider. */
const mostTurns = 160;

/** A strip of `width` wound edge to edge round a bow along `arch`. */
export function wrapStrand(
  arch: readonly ArchPlace[],
  bow: { readonly width: number; readonly thickness: number },
  width: number,
): Strand {
  const length = arch
    .slice(1)
    .reduce((sum, { at }, index) => sum + size(minus(at, arch[index]?.at ?? at)), 0);
  const turns = Math.max(1, Math.min(mostTurns, Math.floor(length / width)));
  const thickness = caneThickness(width);
  const stock: Stock = { section: 'flat-oval', width: (0.97 * length) / turns, thickness };
  const [wide, tall] = [0.4 * bow.width, (bow.thickness + thickness) / 2];
  const side = (bow.width + thickness) / 2;
  // once round the bow: across, out, and the face that it lies on
  const round = [
    [wide, tall, 0, 1],
    [-wide, tall, 0, 1],
    [-side, 0, -1, 0],
    [-wide, -tall, 0, -1],
    [wide, -tall, 0, -1],
    [side, 0, 1, 0],
  ] as const;
  const places = Array.from({ length: turns * round.length }, (_, index): Place => {
    const { at, out, across } = placeOn(arch, (length * (index + 0.5)) / (turns * round.length));
    const [aside, up, faceAside, faceUp] = round[index % round.length] ?? round[0];
    return {
      at: plus(plus(at, across, aside), out, up),
      face: unit(plus(scaled(across, faceAside), out, faceUp)),
    };
  });
  const colour = strandColour('bleached');
  return strandAlong(places, { name: partWords.handleWrap, stock, colour, seed: 95, between: 0 });
}

/** The arch `along` mm from its beginning: middle, direction out, and direction across. */
function placeOn(arch: readonly ArchPlace[], along: number) {
  let left = along;
  for (let step = 1; step < arch.length; step += 1) {
    const [from, to] = [arch[step - 1], arch[step]];
    if (!from || !to) break;
    const long = size(minus(to.at, from.at));
    if (left <= long || step === arch.length - 1) {
      const share = Math.min(1, left / (long || 1));
      const out = unit(mix(from.face, to.face, share));
      const across = unit(cross(out, minus(to.at, from.at)));
      return { at: mix(from.at, to.at, share), out, across };
    }
    left -= long;
  }
  const [at, out, across]: readonly Vector[] = [arch[0]?.at ?? [0, 0, 0], [0, 0, 1], [1, 0, 0]];
  return { at: at ?? [0, 0, 0], out: out ?? [0, 0, 1], across: across ?? [1, 0, 0] };
}
