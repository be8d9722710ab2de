import { BufferGeometry, Mesh, Vector3 } from 'three';
import { expect, test, vi } from 'vitest';
import { fillColour, fillGeometry, sameBytes, upright } from '../../src/scene/toThree.ts';

const triangle = {
  positions: Float32Array.of(0, 0, 0, 10, 0, 0, 0, 20, 30),
  normals: Float32Array.of(0, 0, 1, 0, 0, 1, 0, 1, 0),
  indices: Uint32Array.of(0, 1, 2),
};

test('millimetres with z up become centimetres with y up', () => {
  const geometry = new BufferGeometry();
  fillGeometry(geometry, triangle);
  const mesh = new Mesh(geometry);
  mesh.rotation.set(...upright.rotation);
  mesh.scale.setScalar(upright.scale);
  mesh.updateMatrix();
  const place = new Vector3().fromBufferAttribute(geometry.getAttribute('position'), 2);
  expect(place.applyMatrix4(mesh.matrix).distanceTo(new Vector3(0, 3, -2))).toBeLessThan(1e-9);
  const normal = new Vector3().fromBufferAttribute(geometry.getAttribute('normal'), 2);
  expect(normal.transformDirection(mesh.matrix).distanceTo(new Vector3(0, 0, -1))).toBeLessThan(
    1e-9,
  );
  expect(Array.from(geometry.index?.array ?? [])).toEqual([0, 1, 2]);
});

test('a mesh of the same size is written into the same arrays', () => {
  const geometry = new BufferGeometry();
  fillGeometry(geometry, triangle);
  const { array } = geometry.getAttribute('position');
  fillGeometry(geometry, { ...triangle, positions: triangle.positions.map((value) => 2 * value) });
  expect(geometry.getAttribute('position').array).toBe(array);
  expect(geometry.getAttribute('position').getX(1)).toBeCloseTo(20, 6);
});

test('a mesh of another size lets go of the old arrays', () => {
  const geometry = new BufferGeometry();
  fillGeometry(geometry, triangle);
  const letGo = vi.fn();
  geometry.addEventListener('dispose', letGo);
  fillGeometry(geometry, {
    positions: new Float32Array(12),
    normals: new Float32Array(12),
    indices: Uint32Array.of(0, 1, 2, 0, 2, 3),
  });
  expect(letGo).toHaveBeenCalledOnce();
  expect(geometry.getAttribute('position').count).toBe(4);
  expect(geometry.index?.count).toBe(6);
});

test('the picked row wears the accent and the others their own colour', () => {
  const geometry = new BufferGeometry();
  const strand = Uint16Array.of(1, 2);
  const colour = Uint8Array.of(255, 255, 255, 255, 128, 0);
  fillColour(geometry, { strand, colour, picked: 1, accent: [0, 0, 0.5] });
  const light = geometry.getAttribute('color');
  expect([light.getX(0), light.getY(0)]).toEqual([0, 0]);
  expect(light.getZ(0)).toBeGreaterThan(0.4);
  expect(light.getX(1)).toBeCloseTo(1, 6);
  // sRGB 128 is 0.2159 of full light (IEC 61966-2-1)
  expect(light.getY(1)).toBeCloseTo(0.2159, 3);
});

test('arrays are the same when all their bytes are, wherever they begin', () => {
  const bytes = Uint8Array.from({ length: 23 }, (_, at) => 7 * at);
  const shifted = new Uint8Array([0, ...bytes]).subarray(1);
  expect(sameBytes(bytes, bytes.slice())).toBe(true);
  expect(sameBytes(bytes, shifted)).toBe(true);
  expect(sameBytes(bytes, bytes.subarray(1))).toBe(false);
  for (let at = 0; at < bytes.length; at += 1) {
    const other = bytes.with(at, 1);
    expect(sameBytes(bytes, other)).toBe(false);
    expect(sameBytes(shifted, other)).toBe(false);
  }
});
