import { drawnWords } from '#words/drawn.ts';
import type { Basket } from '../model/basket.ts';
import type { Colour } from '../plan/dyes.ts';
import { crossings, field, stride } from './crossings.ts';
import type { Section } from './section.ts';
import type { Strand } from './strandMesh.ts';

const wood: Colour = [196, 160, 118];
const sides = 72;

/** The board of a board base, as one upright piece whose section is the board's outline; none on others. */
export function board({ plan, net, positions }: Basket): Strand[] {
  const { base } = plan;
  if (base.kind !== 'board') return [];
  const path = crossings(2);
  [-1, 1].forEach((side, at) => {
    const here = at * stride;
    path.data[here + 2] = (positions[2] ?? 0) + (side * base.thickness) / 2;
    path.data[here + field.tangent + 2] = 1;
    path.data[here + field.normal + 1] = 1;
    path.data[here + field.width] = base.length;
    path.strand[at] = net.stakes.length;
  });
  return [
    {
      name: drawnWords.board,
      path,
      section: base.shape === 'round' ? disc() : rectangle,
      thickness: base.shape === 'round' ? base.length : base.width,
      colour: wood,
      seed: 7,
      between: 0,
      closed: false,
    },
  ];
}

function disc(): Section {
  const angles = Array.from({ length: sides }, (_, at) => (2 * Math.PI * at) / sides);
  return {
    points: Float64Array.from(angles.flatMap((a) => [Math.cos(a) / 2, Math.sin(a) / 2])),
    normals: Float64Array.from(angles.flatMap((a) => [Math.cos(a), Math.sin(a)])),
    shade: new Float64Array(sides).fill(1),
  };
}

const rectangle: Section = {
  points: Float64Array.from([
    0.5, -0.5, 0.5, 0.5, 0.5, 0.5, -0.5, 0.5, -0.5, 0.5, -0.5, -0.5, -0.5, -0.5, 0.5, -0.5,
  ]),
  normals: Float64Array.from([1, 0, 1, 0, 0, 1, 0, 1, -1, 0, -1, 0, 0, -1, 0, -1]),
  shade: new Float64Array(8).fill(1),
};
