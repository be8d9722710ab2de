/** The basket as binary glTF: metres, y up, every strand a mesh of its own with its name. */
import { Document, WebIO } from '@gltf-transform/core';
import { shapeFileWords } from '#words/shapeFiles.ts';
import { basketStrands } from '../mesh/basketStrands.ts';
import type { StrandMesh } from '../mesh/strandMesh.ts';
import { sweepStrands } from '../mesh/sweepStrands.ts';
import type { Basket } from '../model/basket.ts';

/** One millimetre in metres. */
const metres = 0.001;

/** A GLB file of all strands. */
export async function glb(basket: Basket): Promise<Uint8Array<ArrayBuffer>> {
  const document = new Document();
  document.getRoot().getAsset().generator = shapeFileWords.glbMaker;
  const buffer = document.createBuffer();
  const scene = document.createScene(basket.plan.name);
  document.getRoot().setDefaultScene(scene);
  const strand = document
    .createMaterial('strand')
    .setBaseColorFactor([1, 1, 1, 1])
    .setMetallicFactor(0)
    .setRoughnessFactor(0.85);
  const accessor = (array: Float32Array | Uint32Array | Uint16Array, type: Kind) =>
    document.createAccessor().setBuffer(buffer).setType(type).setArray(owned(array));
  const { stakes, weavers, base, finish } = basketStrands(basket);
  for (const one of [...stakes, ...weavers, ...base, ...finish]) {
    const swept = sweepStrands([one]);
    if (swept.indices.length === 0) continue;
    const primitive = document
      .createPrimitive()
      .setMaterial(strand)
      .setIndices(accessor(swept.indices, 'SCALAR'))
      .setAttribute('POSITION', accessor(upright(swept.positions, metres), 'VEC3'))
      .setAttribute('NORMAL', accessor(upright(swept.normals, 1), 'VEC3'))
      .setAttribute('COLOR_0', accessor(linearColour(swept), 'VEC4').setNormalized(true));
    const mesh = document.createMesh(one.name).addPrimitive(primitive);
    scene.addChild(document.createNode(one.name).setMesh(mesh));
  }
  return owned(await new WebIO().writeBinary(document));
}

type Kind = 'SCALAR' | 'VEC3' | 'VEC4';

/** From z up to y up, times `scale`. */
function upright(from: Float32Array, scale: number): Float32Array {
  const out = new Float32Array(from.length);
  for (let at = 0; at < from.length; at += 3) {
    out[at] = scale * (from[at] ?? 0);
    out[at + 1] = scale * (from[at + 2] ?? 0);
    out[at + 2] = -scale * (from[at + 1] ?? 0);
  }
  return out;
}

/** Linear red, green, blue and full cover of each vertex, as 16-bit shares: glTF has no sRGB there. */
function linearColour({ colour }: StrandMesh): Uint16Array {
  const out = new Uint16Array((4 * colour.length) / 3).fill(65_535);
  colour.forEach((value, at) => {
    const share = value / 255;
    const linear = share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
    out[4 * Math.floor(at / 3) + (at % 3)] = Math.round(65_535 * linear);
  });
  return out;
}

/** The same array, said to be over memory of its own (which every array here is). */
function owned<T extends Float32Array | Uint32Array | Uint16Array | Uint8Array>(array: T) {
  return array as T & { readonly buffer: ArrayBuffer };
}
