/**
 * A section swept along the places a strand passes.
 * Hot loops over typed arrays: `!` says that an index is inside.
 */

import type { Colour } from '../plan/dyes.ts';
import { field, sectionsAfter, stride } from './crossings.ts';
import { capRing, joinRings } from './rings.ts';
import type { Section } from './section.ts';
import type { Strand, StrandMesh } from './strandMesh.ts';
import { tone } from './tone.ts';

/** Fills one mesh strand by strand. */
export class Sweep {
  readonly mesh: StrandMesh;
  #vertex = 0;
  #index = 0;
  // the strand being added
  #section!: Section;
  #thickness = 0;
  #thinned: Float64Array | undefined;
  #colour: Colour = [0, 0, 0];
  #seed = 0;
  // width direction of the section before, kept where the next has none
  #ux = 1;
  #uy = 0;
  #uz = 0;
  // middle of the section before, in the same strand
  #px = 0;
  #py = 0;
  #pz = 0;
  #isFirst = true;

  constructor(vertices: number, indices: number) {
    this.mesh = {
      positions: new Float32Array(3 * vertices),
      normals: new Float32Array(3 * vertices),
      indices: new Uint32Array(indices),
      strand: new Uint16Array(vertices),
      colour: new Uint8Array(3 * vertices),
    };
  }

  add(added: Strand): void {
    const { path, section, thickness, thinned, colour, seed, between, closed } = added;
    const { sparse = false } = added;
    this.#section = section;
    this.#thickness = thickness;
    this.#thinned = thinned;
    this.#colour = colour;
    this.#seed = seed;
    this.#isFirst = true;
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
      const sections = sectionsAfter(path, here, between, sparse);
      this.#gap(data, at, next * stride, half, reach, sections, strand[here]!, here);
    }
    const sides = section.shade.length;
    const rings = (this.#vertex - first) / sides;
    this.#index = joinRings(this.mesh, this.#index, first, sides, rings, closed);
    if (!closed) {
      this.#cap(first, true);
      this.#cap(first + (rings - 1) * sides, false);
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
      const swing = (t - s) * (t - s);
      // across the strand as at the crossings: where it goes steeply from one face of the wall to the
      // other, the way itself says little about which way is up
      const tx = s * data[a + 3]! + t * data[b + 3]!;
      const ty = s * data[a + 4]! + t * data[b + 4]!;
      const tz = s * data[a + 5]! + t * data[b + 5]!;
      const cx = ny * tz - nz * ty;
      const cy = nz * tx - nx * tz;
      const cz = nx * ty - ny * tx;
      const up = (bow * (1 - swing * swing)) / Math.sqrt(cx * cx + cy * cy + cz * cz || 1);
      this.#ring(
        ha * ax + hb * bx + ga * data[a + 3]! + gb * data[b + 3]! + up * cx,
        ha * ay + hb * by + ga * data[a + 4]! + gb * data[b + 4]! + up * cy,
        ha * az + hb * bz + ga * data[a + 5]! + gb * data[b + 5]! + up * cz,
        dx,
        dy,
        dz,
        dy * cz - dz * cy,
        dz * cx - dx * cz,
        dx * cy - dy * cx,
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
    const thickness = this.#thickness * this.#share(place);
    const red = this.#colour[0] * light;
    const green = this.#colour[1] * light;
    const blue = this.#colour[2] * light;
    // on the inside of a sharp bend the strand gathers in place of folding through itself: no point
    // comes to lie behind its fellow in the section before
    const wx = px - this.#px;
    const wy = py - this.#py;
    const wz = pz - this.#pz;
    const back = this.#isFirst ? 0 : 3 * shade.length;
    let vertex = this.#vertex;
    for (let side = 0; side < shade.length; side += 1, vertex += 1) {
      const u = points[2 * side]! * width;
      const v = points[2 * side + 1]! * thickness;
      const nu = turned[2 * side]!;
      const nv = turned[2 * side + 1]!;
      const at = 3 * vertex;
      positions[at] = px + u * ux + v * vx;
      positions[at + 1] = py + u * uy + v * vy;
      positions[at + 2] = pz + u * uz + v * vz;
      const last = at - back;
      const on =
        (positions[at]! - positions[last]!) * wx +
        (positions[at + 1]! - positions[last + 1]!) * wy +
        (positions[at + 2]! - positions[last + 2]!) * wz;
      if (on < 0) {
        positions[at] = positions[last]!;
        positions[at + 1] = positions[last + 1]!;
        positions[at + 2] = positions[last + 2]!;
      }
      normals[at] = nu * ux + nv * vx;
      normals[at + 1] = nu * uy + nv * vy;
      normals[at + 2] = nu * uz + nv * vz;
      colour[at] = Math.min(255, red * shade[side]!);
      colour[at + 1] = Math.min(255, green * shade[side]!);
      colour[at + 2] = Math.min(255, blue * shade[side]!);
      strands[vertex] = strand;
    }
    this.#vertex = vertex;
    this.#px = px;
    this.#py = py;
    this.#pz = pz;
    this.#isFirst = false;
  }

  /** Share of the thickness at `place`, a part of the way to the next one included. */
  #share(place: number): number {
    if (!this.#thinned) return 1;
    const here = Math.floor(place);
    const own = this.#thinned[here]!;
    return own + (place - here) * ((this.#thinned[here + 1] ?? own) - own);
  }

  /** Closes an end of the strand at the ring that begins at vertex `ring`. */
  #cap(ring: number, isStart: boolean): void {
    const sides = this.#section.shade.length;
    this.#index = capRing(this.mesh, this.#index, this.#vertex, ring, this.#section, isStart);
    this.#vertex += sides;
  }
}
