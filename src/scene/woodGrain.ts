import {
  DataTexture,
  LinearFilter,
  LinearMipmapLinearFilter,
  RepeatWrapping,
  SRGBColorSpace,
} from 'three';

/** Points of the picture along the grain and across it. */
const along = 64;
const across = 512;
const boards = 8;

/** A faint grain of boards side by side, light and shade only; the same every time. */
export function woodGrain(): DataTexture {
  const data = new Uint8Array(4 * along * across);
  for (let y = 0; y < across; y += 1) {
    const board = Math.floor((y * boards) / across);
    const inBoard = ((y * boards) / across) % 1;
    const seam = inBoard < 0.02 ? 0.72 : 1;
    const tint = 1 - 0.07 * wave(board, 0);
    for (let x = 0; x < along; x += 1) {
      // slow waves along the board bend fine lines across it
      const bend = 2.5 * Math.sin((2 * Math.PI * x) / along + 7 * wave(board, 1));
      const line = wave(board, Math.floor(y + bend)) + wave(board + 31, Math.floor((y + bend) / 5));
      const light = Math.round(255 * seam * tint * (1 - 0.035 * line));
      data.set([light, light, light, 255], 4 * (y * along + x));
    }
  }
  const texture = new DataTexture(data, along, across);
  texture.colorSpace = SRGBColorSpace;
  texture.wrapS = texture.wrapT = RepeatWrapping;
  texture.repeat.set(2, 2.5);
  texture.magFilter = LinearFilter;
  texture.minFilter = LinearMipmapLinearFilter;
  texture.generateMipmaps = true;
  texture.anisotropy = 2;
  texture.needsUpdate = true;
  return texture;
}

/** A number in 0 … 1 that looks random. */
function wave(one: number, other: number): number {
  const value = Math.sin(one * 127.1 + other * 311.7) * 43758.5453;
  return value - Math.floor(value);
}
