/** Rows coloured by what was read off them. */
import type { RowReading } from '../model/basket.ts';
import type { StrandMesh } from './strandMesh.ts';

export const tintKinds = ['lean', 'gap', 'strain'] as const;
export type TintKind = (typeof tintKinds)[number];

/** Colours of rows and what their ends stand for. */
export interface RowTints {
  /** Red, green, blue (sRGB) of each row, from row 0. */
  readonly colours: Uint8Array;
  readonly least: number;
  readonly most: number;
}

/**
 * Viridis in seventeen stops, dark to light (van der Walt & Smith 2015, matplotlib): its lightness climbs evenly,
 * so that it reads without colour and with any kind of colour blindness.
 */
export const viridis: readonly (readonly [number, number, number])[] = [
  [68, 1, 84],
  [72, 24, 106],
  [71, 45, 123],
  [66, 64, 134],
  [59, 82, 139],
  [51, 99, 141],
  [44, 114, 142],
  [38, 130, 142],
  [33, 145, 140],
  [31, 160, 136],
  [40, 174, 128],
  [63, 188, 115],
  [94, 201, 98],
  [132, 212, 75],
  [173, 220, 48],
  [216, 226, 25],
  [253, 231, 37],
];

/** What is coloured: degrees of lean, least clear gap in mm, or strain of the weaver's edge as a share. */
function rowValue(row: RowReading, kind: TintKind): number {
  if (kind === 'lean') return row.lean;
  return kind === 'gap' ? row.gapLeast : row.edgeStrain;
}

/** Tints of all rows, from the least value to the most. */
export function rowTints(rows: readonly RowReading[], kind: TintKind): RowTints {
  const values = rows.map((row) => rowValue(row, kind));
  const least = values.reduce((low, value) => Math.min(low, value), values[0] ?? 0);
  const most = values.reduce((high, value) => Math.max(high, value), values[0] ?? 0);
  const colours = new Uint8Array(3 * (rows.length + 1));
  values.forEach((value, at) => {
    colours.set(viridisAt(most > least ? (value - least) / (most - least) : 0.5), 3 * (at + 1));
  });
  return { colours, least, most };
}

/** The colour at `share`, 0 … 1. */
function viridisAt(share: number): readonly [number, number, number] {
  const place = Math.min(1, Math.max(0, share)) * (viridis.length - 1);
  const low = Math.min(viridis.length - 2, Math.floor(place));
  const [from, to] = [viridis[low]!, viridis[low + 1]!];
  const mix = (d: 0 | 1 | 2) => Math.round(from[d] + (place - low) * (to[d] - from[d]));
  return [mix(0), mix(1), mix(2)];
}

/** The mesh with the colours of its rows; the shade of its strands is kept. */
export function tinted(mesh: StrandMesh, { colours }: RowTints): StrandMesh {
  const colour = new Uint8Array(mesh.colour.length);
  mesh.strand.forEach((row, vertex) => {
    const at = 3 * vertex;
    const lightest = Math.max(mesh.colour[at]!, mesh.colour[at + 1]!, mesh.colour[at + 2]!);
    // creases are darker than faces by about a third
    const shade = 0.62 + 0.38 * Math.min(1, lightest / 200);
    for (let d = 0; d < 3; d += 1) colour[at + d] = shade * (colours[3 * row + d] ?? 128);
  });
  return { ...mesh, colour };
}
