/**
 * Strands as triangles: a section swept along the places a strand passes.
 * Hot loops over typed arrays: `!` says that an index is inside.
 */
import type { Crossings } from './crossings.ts';
import { field, sectionCount, stride } from './crossings.ts';
import type { Colour } from './palette.ts';
import { tone } from './palette.ts';
import type { Section } from './section.ts';

/** Triangles of many strands. Winding is counter-clockwise seen from outside the strand. */
export interface StrandMesh {
  /** x, y, z of each vertex, mm, z up. */
  readonly positions: Float32Array;
  /** Unit normal of each vertex. */
  readonly normals: Float32Array;
  /** Three vertices a triangle. */
  readonly indices: Uint32Array;
  /** Stake index or row number of each vertex. */
  readonly strand: Uint16Array;
  /** Red, green, blue of each vertex, 0 … 255 (sRGB). */
  readonly colour: Uint8Array;
}

/** One strand to draw. */
export interface Strand {
  readonly path: Crossings;
  readonly section: Section;
  /** Thickness through the wall, mm. */
  readonly thickness: number;
  readonly colour: Colour;
  /** Picks its variation of tone. */
  readonly seed: number;
  /** Sections drawn in each gap. */
  readonly between: number;
  /** True when the last place leads on to the first. */
  readonly closed: boolean;
}

/** All of `strands` as one mesh. */
export function strandMesh(strands: readonly Strand[]): StrandMesh {
  let vertices = 0;
  let triangles = 0;
  for (const { path, section, between, closed } of strands) {
    if (path.count < 2) continue;
    const sides = section.shade.length;
    const rings = sectionCount(path, between, closed);
    vertices += sides * (rings + (closed ? 0 : 2));
    triangles += 2 * sides * (closed ? rings : rings - 1) + (closed ? 0 : 2 * (sides - 2));
  }
  const sweep = new Sweep(vertices, 3 * triangles);
  for (const strand of strands) {
    if (strand.path.count >= 2) sweep.add(strand);
  }
  return sweep.mesh;
}

/** Fills one mesh strand by strand. */
class Sweep {
  readonly mesh: StrandMesh;
  #vertex = 0;
  #index = 0;
  // the strand being added
  #section!: Section;
  #thickness = 0;
  #colour: Colour = [0, 0, 0];
  #seed = 0;
  // width direction of the section before, kept where the next has none
  #ux = 1;
  #uy = 0;
  #uz = 0;

  constructor(vertices: number, indices: number) {
    this.mesh = {
      positions: new Float32Array(3 * vertices),
      normals: new Float32Array(3 * vertices),
      indices: new Uint32Array(indices),
      strand: new Uint16Array(vertices),
      colour: new Uint8Array(3 * vertices),
    };
  }

  add({ path, section, thickness, colour, seed, between, closed }: Strand): void {
    this.#section = section;
    this.#thickness = thickness;
    this.#colour = colour;
    this.#seed = seed;
    const first = this.#vertex;
    const { data, bears, strand, count } = path;
    for (let here = 0; here < count; here += 1) {
      const at = here * stride;
      const half = bears[here] === 1 ? data[at + field.bearing]! : 0;
      if (bears[here] === 1) this.#flat(data, at, -half, strand[here]!, here);
      this.#flat(data, at, half, strand[here]!, here);
      const next = here + 1 < count ? here + 1 : 0;
      if (next === 0 && !closed) break;
      const reach = bears[next] === 1 ? data[next * stride + field.bearing]! : 0;
      this.#gap(data, at, next * stride, half, reach, between, strand[here]!, here);
    }
    const sides = section.shade.length;
    const rings = (this.#vertex - first) / sides;
    this.#join(first, sides, rings, closed);
    if (!closed) {
      this.#cap(first, sides, true);
      this.#cap(first + (rings - 1) * sides, sides, false);
    }
  }

  /** The section at a crossing, `along` mm on from its middle. */
  #flat(data: Float64Array, at: number, along: number, strand: number, place: number): void {
    const tx = data[at + 3]!;
    const ty = data[at + 4]!;
    const tz = data[at + 5]!;
    this.#ring(
      data[at]! + along * tx,
      data[at + 1]! + along * ty,
      data[at + 2]! + along * tz,
      tx,
      ty,
      tz,
      data[at + 6]!,
      data[at + 7]!,
      data[at + 8]!,
      data[at + field.width]!,
      strand,
      place,
    );
  }

  /** Sections of a cubic Hermite arc from `half` mm after one crossing to `reach` mm before the next. */
  #gap(
    data: Float64Array,
    a: number,
    b: number,
    half: number,
    reach: number,
    between: number,
    strand: number,
    place: number,
  ): void {
    const ax = data[a]! + half * data[a + 3]!;
    const ay = data[a + 1]! + half * data[a + 4]!;
    const az = data[a + 2]! + half * data[a + 5]!;
    const bx = data[b]! - reach * data[b + 3]!;
    const by = data[b + 1]! - reach * data[b + 4]!;
    const bz = data[b + 2]! - reach * data[b + 5]!;
    const size = Math.sqrt((bx - ax) ** 2 + (by - ay) ** 2 + (bz - az) ** 2);
    const bow = data[a + field.bow]!;
    for (let step = 1; step <= between; step += 1) {
      const t = step / (between + 1);
      const s = 1 - t;
      // Hermite basis: ends, then tangents of length `size`
      const ha = s * s * (1 + 2 * t);
      const hb = t * t * (1 + 2 * s);
      const ga = size * s * s * t;
      const gb = -size * t * t * s;
      const slope = 6 * t * s;
      const da = size * s * (1 - 3 * t);
      const db = size * t * (1 - 3 * s);
      const nx = s * data[a + 6]! + t * data[b + 6]!;
      const ny = s * data[a + 7]! + t * data[b + 7]!;
      const nz = s * data[a + 8]! + t * data[b + 8]!;
      const dx = slope * (bx - ax) + da * data[a + 3]! + db * data[b + 3]!;
      const dy = slope * (by - ay) + da * data[a + 4]! + db * data[b + 4]!;
      const dz = slope * (bz - az) + da * data[a + 5]! + db * data[b + 5]!;
      const up = size > 0 ? (bow * 4 * t * s) / Math.sqrt(dx * dx + dy * dy + dz * dz || 1) : 0;
      this.#ring(
        ha * ax + hb * bx + ga * data[a + 3]! + gb * data[b + 3]! + up * (ny * dz - nz * dy),
        ha * ay + hb * by + ga * data[a + 4]! + gb * data[b + 4]! + up * (nz * dx - nx * dz),
        ha * az + hb * bz + ga * data[a + 5]! + gb * data[b + 5]! + up * (nx * dy - ny * dx),
        dx,
        dy,
        dz,
        nx,
        ny,
        nz,
        s * data[a + field.width]! + t * data[b + field.width]!,
        strand,
        place + t,
      );
    }
  }

  /** One section: middle p, direction d, outward n (not square to d, of any length), width. */
  #ring(
    px: number,
    py: number,
    pz: number,
    dx: number,
    dy: number,
    dz: number,
    nx: number,
    ny: number,
    nz: number,
    width: number,
    strand: number,
    place: number,
  ): void {
    // u = n × d across the strand, v = d × u out of its face
    const cx = ny * dz - nz * dy;
    const cy = nz * dx - nx * dz;
    const cz = nx * dy - ny * dx;
    const across = Math.sqrt(cx * cx + cy * cy + cz * cz);
    if (across > 1e-12) {
      this.#ux = cx / across;
      this.#uy = cy / across;
      this.#uz = cz / across;
    }
    const ux = this.#ux;
    const uy = this.#uy;
    const uz = this.#uz;
    let vx = dy * uz - dz * uy;
    let vy = dz * ux - dx * uz;
    let vz = dx * uy - dy * ux;
    const out = Math.sqrt(vx * vx + vy * vy + vz * vz);
    if (out > 1e-12) {
      vx /= out;
      vy /= out;
      vz /= out;
    } else {
      // no direction at all: some direction square to u
      vx = Math.abs(uz) < 0.8 ? -uz * ux : 1 - ux * ux;
      vy = Math.abs(uz) < 0.8 ? -uz * uy : -ux * uy;
      vz = Math.abs(uz) < 0.8 ? 1 - uz * uz : -ux * uz;
      const size = Math.sqrt(vx * vx + vy * vy + vz * vz);
      vx /= size;
      vy /= size;
      vz /= size;
    }
    const { positions, normals, strand: strands, colour } = this.mesh;
    const { points, normals: turned, shade } = this.#section;
    const light = tone(this.#seed + strand, place / 3);
    const red = this.#colour[0] * light;
    const green = this.#colour[1] * light;
    const blue = this.#colour[2] * light;
    let vertex = this.#vertex;
    for (let side = 0; side < shade.length; side += 1, vertex += 1) {
      const u = points[2 * side]! * width;
      const v = points[2 * side + 1]! * this.#thickness;
      const nu = turned[2 * side]!;
      const nv = turned[2 * side + 1]!;
      const at = 3 * vertex;
      positions[at] = px + u * ux + v * vx;
      positions[at + 1] = py + u * uy + v * vy;
      positions[at + 2] = pz + u * uz + v * vz;
      normals[at] = nu * ux + nv * vx;
      normals[at + 1] = nu * uy + nv * vy;
      normals[at + 2] = nu * uz + nv * vz;
      colour[at] = Math.min(255, red * shade[side]!);
      colour[at + 1] = Math.min(255, green * shade[side]!);
      colour[at + 2] = Math.min(255, blue * shade[side]!);
      strands[vertex] = strand;
    }
    this.#vertex = vertex;
  }

  /** Triangles between each ring and the next. */
  #join(first: number, sides: number, rings: number, closed: boolean): void {
    const { indices } = this.mesh;
    let at = this.#index;
    for (let ring = 0; ring < (closed ? rings : rings - 1); ring += 1) {
      const here = first + ring * sides;
      const next = ring + 1 < rings ? here + sides : first;
      for (let side = 0; side < sides; side += 1) {
        const other = side + 1 < sides ? side + 1 : 0;
        indices[at] = here + side;
        indices[at + 1] = here + other;
        indices[at + 2] = next + side;
        indices[at + 3] = here + other;
        indices[at + 4] = next + other;
        indices[at + 5] = next + side;
        at += 6;
      }
    }
    this.#index = at;
  }

  /** Closes a strand's end with a fan over a copy of the ring at `ring`. */
  #cap(ring: number, sides: number, start: boolean): void {
    const { positions, normals, strand, colour, indices } = this.mesh;
    // u × v of the section is the direction of travel
    const { normals: turned } = this.#section;
    const [p, q] = [3 * ring, 3 * (ring + 2)];
    const turn = turned[0]! * turned[5]! - turned[1]! * turned[4]!;
    const sign = (start ? -1 : 1) * Math.sign(turn);
    let nx = normals[p + 1]! * normals[q + 2]! - normals[p + 2]! * normals[q + 1]!;
    let ny = normals[p + 2]! * normals[q]! - normals[p]! * normals[q + 2]!;
    let nz = normals[p]! * normals[q + 1]! - normals[p + 1]! * normals[q]!;
    const size = sign * Math.sqrt(nx * nx + ny * ny + nz * nz) || 1;
    nx /= size;
    ny /= size;
    nz /= size;
    const first = this.#vertex;
    for (let side = 0; side < sides; side += 1) {
      const from = 3 * (ring + side);
      const to = 3 * (first + side);
      for (let axis = 0; axis < 3; axis += 1) {
        positions[to + axis] = positions[from + axis]!;
        colour[to + axis] = colour[from + axis]!;
      }
      normals[to] = nx;
      normals[to + 1] = ny;
      normals[to + 2] = nz;
      strand[first + side] = strand[ring + side]!;
    }
    for (let side = 1; side + 1 < sides; side += 1) {
      indices[this.#index] = first;
      indices[this.#index + 1] = first + (start ? side + 1 : side);
      indices[this.#index + 2] = first + (start ? side : side + 1);
      this.#index += 3;
    }
    this.#vertex += sides;
  }
}
