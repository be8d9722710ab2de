import { baseSize } from '../../plan/baseSize.ts';
import type { MatBase } from '../../plan/schema.ts';
import type { BaseCell, BasePart, BaseStrand, Place } from './basePart.ts';
import type { Crossings } from './crossings.ts';
import {
  crossings,
  domeCurvature,
  matAnchors,
  matCells,
  matEnds,
  matFrame,
  matLift,
  matMirror,
  matOddEnd,
  matRings,
  matStrands,
  outermost,
  outward,
} from './crossings.ts';
import { dome, startRise } from './dome.ts';

/** The mat base: a node at every crossing, and one on the edge for every place a stake leaves it. */
export function matBase(base: MatBase): BasePart {
  const cross = crossings(base);
  const { a, b } = cross;
  const size = baseSize(base);
  const half = base.stake.width / 2;
  const ends = matEnds(cross);
  const places = ends.map(({ side, stake }): Place => {
    const [outX, outY] = outward[side];
    const along = side === 'south' || side === 'north';
    return {
      side,
      strand: along ? a + stake : stake,
      far: side === 'north' || side === 'east' ? 1 : 0,
      x: along ? cross.x(stake) : (outX * size.length) / 2,
      y: along ? (outY * size.width) / 2 : cross.y(stake),
      alongX: -outY,
      alongY: outX,
    };
  });
  const inner = a * b;
  const height = startRise(base.centreLift, size);
  const rise = (x: number, y: number) => height * dome(size.length, size.width, x, y);
  const start = new Float64Array(3 * (inner + places.length));
  for (let node = 0; node < inner; node++) {
    const [x, y] = [cross.x(node % b), cross.y(Math.floor(node / b))];
    start.set([x, y, rise(x, y)], 3 * node);
  }
  places.forEach(({ x, y }, p) => {
    start.set([x, y, rise(x, y)], 3 * (inner + p));
  });
  return {
    inner,
    start,
    ...matRings(cross),
    places,
    strands: strands(cross, base, places, half),
    ...edgeCells(cross, places, half),
    loops: [],
    ties: [],
    mirror: { x: matMirror(cross, 'x'), y: matMirror(cross, 'y') },
    frame: matFrame(cross),
    anchors: matAnchors(cross),
    lift: matLift(cross, base.centreLift, size.length, size.width),
    rigid: false,
    oddPlace: (at) => matOddEnd(cross, at, size),
  };
}

/** Lengthwise stakes, then crosswise ones; the edge is half a stake beyond the last crossing. */
function strands(
  cross: Crossings,
  base: MatBase,
  places: readonly Place[],
  half: number,
): BaseStrand[] {
  const size = baseSize(base);
  const place = (strand: number, far: 0 | 1) =>
    places.findIndex((one) => one.strand === strand && one.far === far);
  return matStrands(cross, (part, index, nodes) => {
    const strand = part === 'lengthwise' ? index : cross.a + index;
    const step = part === 'lengthwise' ? cross.dx : cross.dy;
    return {
      part,
      index,
      nodes,
      places: [place(strand, 0), place(strand, 1)],
      rest: [half, ...nodes.slice(1).map(() => step), half],
      natural: domeCurvature(part, base.centreLift, size),
    };
  });
}

/** Cells between crossings, and from the outermost crossings to the edge; a triangle at each corner. */
function edgeCells(
  cross: Crossings,
  places: readonly Place[],
  half: number,
): Pick<BasePart, 'cells' | 'triangles'> {
  const { a, b, dx, dy } = cross;
  const inner = a * b;
  const cells: BaseCell[] = matCells(cross);
  const triangles: [number, number, number][] = [];
  const ends = matEnds(cross);
  places.forEach(({ side }, p) => {
    const q = (p + 1) % places.length;
    const from = outermost(cross, side, ends[p]!.stake);
    if (places[q]!.side !== side) {
      triangles.push([inner + p, from, inner + q]);
      return;
    }
    const to = outermost(cross, side, ends[q]!.stake);
    const high = side === 'south' || side === 'north' ? dx : dy;
    cells.push({ nodes: [inner + p, from, to, inner + q], wide: half, high });
  });
  return { cells, triangles };
}
