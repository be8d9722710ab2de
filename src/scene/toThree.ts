/**
 * The seam to three: plain arrays in millimetres, z up, become geometry as they are; what holds it is
 * turned and scaled to scene units (centimetres, y up) by `upright`. Arrays of the same size are
 * overwritten in place, so that a drag sends numbers to the graphics card and allocates nothing.
 * Hot loops over typed arrays: `as number` says that an index is inside.
 */
import type { BufferGeometry } from 'three';
import { BufferAttribute } from 'three';

/** One millimetre in scene units. */
export const centimetres = 0.1;

/** Place of an object whose geometry is in millimetres, z up: x, y, z there is x, z, −y here. */
export const upright = { rotation: [-Math.PI / 2, 0, 0], scale: centimetres } as const;

interface Triangles {
  readonly positions: Float32Array;
  readonly normals?: Float32Array;
  readonly indices: Uint32Array;
}

/**
 * Puts positions, normals and triangles into `geometry`. Its bounds are not worked out anew: they only put
 * what is drawn into an order. Who tries a ray against it, or leaves out what is off the picture, sets them
 * to null.
 */
export function fillGeometry(geometry: BufferGeometry, mesh: Triangles): void {
  const sameSize =
    geometry.getAttribute('position')?.count === mesh.positions.length / 3 &&
    geometry.index?.count === mesh.indices.length;
  if (!sameSize) {
    // lets go of the buffers on the graphics card
    geometry.dispose();
    for (const name of Object.keys(geometry.attributes)) geometry.deleteAttribute(name);
  }
  copied(geometry, 'position', mesh.positions);
  if (mesh.normals) copied(geometry, 'normal', mesh.normals);
  fillIndex(geometry, mesh.indices, sameSize);
}

/** Colours of strands, and the row to pick out. */
export interface Tint {
  readonly strand: Uint16Array;
  readonly colour: Uint8Array;
  /** Strand number to draw in `accent`; null for none. */
  readonly picked: number | null;
  /** Linear red, green, blue, 0 … 1. */
  readonly accent: readonly [number, number, number];
}

/** Puts colours into `geometry`, made linear as three wants them; the picked strand in the accent. */
export function fillColour(
  geometry: BufferGeometry,
  { strand, colour, picked, accent }: Tint,
): void {
  const attribute = attributeOf(geometry, 'color', colour.length);
  const out = attribute.array as Float32Array;
  for (let vertex = 0; vertex < strand.length; vertex += 1) {
    const at = 3 * vertex;
    if (picked !== null && strand[vertex] === picked) {
      // keep some of the strand's own light and shade
      const light = 0.35 + 0.9 * (linear[colour[at + 1] as number] as number);
      out[at] = accent[0] * light;
      out[at + 1] = accent[1] * light;
      out[at + 2] = accent[2] * light;
    } else {
      out[at] = linear[colour[at] as number] as number;
      out[at + 1] = linear[colour[at + 1] as number] as number;
      out[at + 2] = linear[colour[at + 2] as number] as number;
    }
  }
  attribute.needsUpdate = true;
}

/** Linear light for each sRGB value 0 … 255 (IEC 61966-2-1). */
const linear = Float32Array.from({ length: 256 }, (_, value) => {
  const share = value / 255;
  return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
});

function copied(geometry: BufferGeometry, name: string, from: Float32Array): void {
  const attribute = attributeOf(geometry, name, from.length);
  (attribute.array as Float32Array).set(from);
  attribute.needsUpdate = true;
}

/** The attribute `name` with room for `length` numbers: the present one where it fits. */
function attributeOf(geometry: BufferGeometry, name: string, length: number): BufferAttribute {
  const present = geometry.getAttribute(name);
  if (present instanceof BufferAttribute && present.array.length === length) return present;
  const made = new BufferAttribute(new Float32Array(length), 3);
  geometry.setAttribute(name, made);
  return made;
}

function fillIndex(geometry: BufferGeometry, indices: Uint32Array, sameSize: boolean): void {
  const present = geometry.index;
  if (!present || !sameSize) {
    geometry.setIndex(new BufferAttribute(indices.slice(), 1));
    return;
  }
  // handing them over again takes less time than finding out that they are the same
  present.array.set(indices);
  present.needsUpdate = true;
}

/** Whether two arrays hold the same bytes. Four are compared at a time. */
export function sameBytes(one: Uint8Array, other: Uint8Array): boolean {
  if (one.length !== other.length) return false;
  const begin = one.byteOffset % 4 === 0 && other.byteOffset % 4 === 0 ? one.length >> 2 : 0;
  const a = new Uint32Array(one.buffer, begin ? one.byteOffset : 0, begin);
  const b = new Uint32Array(other.buffer, begin ? other.byteOffset : 0, begin);
  for (let at = 0; at < begin; at += 1) if (a[at] !== b[at]) return false;
  for (let at = 4 * begin; at < one.length; at += 1) if (one[at] !== other[at]) return false;
  return true;
}
