/** A drawn strand as painted: of each short piece the broad face that is seen, and its narrow side. */

import { arcPlace } from '../../../mesh/arc.ts';
import { cross } from '../../../mesh/finish/vector.ts';
import type { Strand } from '../../../mesh/strandMesh.ts';
import type { Camera, Vector } from './camera.ts';
import { direction, dot, middle, moved } from './camera.ts';
import type { Pile, Ribbon } from './ribbon.ts';

/** A place on a strand's middle line, and how it lies there. */
export interface Spot {
  readonly at: Vector;
  /** Out of the strand's face. */
  readonly face: Vector;
  readonly width: number;
  readonly thickness: number;
  /** Unit direction across the strand. */
  readonly across: Vector;
}

/** The strand in `pieces` parts from each of its places to the next. */
export function spotsOf({ path, thickness, thinned }: Strand, pieces: number): Spot[] {
  const places = Array.from({ length: (path.count - 1) * pieces + 1 }, (_, index) => {
    const place = Math.min(path.count - 2, Math.floor(index / pieces));
    const share = index / pieces - place;
    const [own, next] = [thinned?.[place] ?? 1, thinned?.[place + 1] ?? 1];
    const { position, face, width } = arcPlace(path, place, place + 1, share);
    return { at: position, face, width, thickness: thickness * (own + share * (next - own)) };
  });
  return places.map((spot, index) => {
    const way = direction((places[index - 1] ?? spot).at, (places[index + 1] ?? spot).at);
    return { ...spot, across: direction([0, 0, 0], cross(spot.face, way)) };
  });
}

/** How a piece is drawn. */
export interface PieceLook {
  readonly colour: Ribbon['colour'];
  readonly light: number;
  readonly before: number;
}

/**
 * One pile for each piece from a spot to the next, as `look` says by its middle and by how far its face
 * turns to the eye (1 wholly, −1 away); none where it says null.
 */
export function strandPiles(
  spots: readonly Spot[],
  camera: Camera,
  look: (middle: Vector, facing: number) => PieceLook | null,
): Pile[] {
  return spots.slice(1).flatMap((to, index): Pile[] => {
    const from = spots[index] ?? to;
    const place = middle(from.at, to.at);
    const facing = dot(from.face, camera.toEye);
    const said = look(place, facing);
    if (!said) return [];
    const { colour, light, before } = said;
    const seen = facing >= 0 ? 1 : -1;
    const near = dot(from.across, camera.toEye) >= 0 ? 1 : -1;
    const corner = (spot: Spot, aside: number, up: number): Vector => {
      const edge = moved(spot.at, spot.across, (aside * spot.width) / 2);
      return moved(edge, spot.face, (up * spot.thickness) / 2);
    };
    const edge = (aside: number, up: number) => [corner(from, aside, up), corner(to, aside, up)];
    const ribbon = (one: readonly Vector[], other: readonly Vector[], out: Vector): Ribbon => {
      const outline = [...one, ...other.toReversed()];
      return { outline, edges: [one, other], facing: out, colour, light };
    };
    const high = edge(near, seen);
    const ribbons = [
      ribbon(high, edge(near, -seen), moved([0, 0, 0], from.across, near)),
      ribbon(edge(-near, seen), high, moved([0, 0, 0], from.face, seen)),
    ];
    return [{ place, before, ribbons }];
  });
}
