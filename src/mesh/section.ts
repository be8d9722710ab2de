/** Sections of strands: what a stake or a weaver looks like cut across. */
import type { Strand } from '../model/net/net.ts';

/**
 * A section as a closed ring of points, counter-clockwise in (u, v): u along the strand's width,
 * v through its thickness, positive on the face that looks out of the basket.
 */
export interface Section {
  /** u, v of each point, in widths and thicknesses, −0.5 … 0.5. */
  readonly points: Float64Array;
  /** Unit normal of each point, along u and v. */
  readonly normals: Float64Array;
  /** Light that reaches each point, 1 on the faces, less in the creases between strands. */
  readonly shade: Float64Array;
}

const diagonal = Math.SQRT1_2;
const crease = 0.62;

/** A thin slat with eased edges. */
const flat = section([
  [0.5, -0.2, 1, 0, crease],
  [0.5, 0.2, 1, 0, crease],
  [0.46, 0.5, 0, 1, 1],
  [-0.46, 0.5, 0, 1, 1],
  [-0.5, 0.2, -1, 0, crease],
  [-0.5, -0.2, -1, 0, crease],
  [-0.46, -0.5, 0, -1, 1],
  [0.46, -0.5, 0, -1, 1],
]);

/** Flat within, a low arch outside. */
const flatOval = section([
  [0.5, -0.15, 0.98, 0.2, crease],
  [0.36, 0.28, 0.5, 0.87, 0.86],
  [0, 0.5, 0, 1, 1],
  [-0.36, 0.28, -0.5, 0.87, 0.86],
  [-0.5, -0.15, -0.98, 0.2, crease],
  [-0.44, -0.5, 0, -1, 0.85],
  [0.44, -0.5, 0, -1, 0.85],
]);

/** Flat within, half a round outside. */
const halfRound = section([
  [0.5, -0.4, 1, 0, crease],
  [0.38, 0.15, diagonal, diagonal, 0.84],
  [0, 0.5, 0, 1, 1],
  [-0.38, 0.15, -diagonal, diagonal, 0.84],
  [-0.5, -0.4, -1, 0, crease],
  [-0.44, -0.5, 0, -1, 0.85],
  [0.44, -0.5, 0, -1, 0.85],
]);

/** A round rod, as an octagon. */
const round = section(
  Array.from({ length: 8 }, (_, index) => {
    const angle = (index * Math.PI) / 4;
    const [u, v] = [Math.cos(angle), Math.sin(angle)];
    return [u / 2, v / 2, u, v, 1 - (1 - crease) * u * u];
  }),
);

const sections: Readonly<Record<Strand['section'], Section>> = {
  flat,
  'flat-oval': flatOval,
  'half-round': halfRound,
  round,
};

/** The section that strands of one kind are drawn with. */
export function sectionOf(strand: Pick<Strand, 'section'>): Section {
  return sections[strand.section];
}

/** A section from rows of u, v, normal along u, normal along v, shade. */
function section(rows: readonly (readonly number[])[]): Section {
  const normals = rows.flatMap(([, , u = 0, v = 0]) => {
    const size = Math.hypot(u, v);
    return [u / size, v / size];
  });
  return {
    points: Float64Array.from(rows.flatMap(([u = 0, v = 0]) => [u, v])),
    normals: Float64Array.from(normals),
    shade: Float64Array.from(rows.map(([, , , , shade = 1]) => shade)),
  };
}
