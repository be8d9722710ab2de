import { useThree } from '@react-three/fiber';
import type { RefObject } from 'react';
import { useLayoutEffect, useRef } from 'react';
import { PerspectiveCamera } from 'three';
import type { Inset } from './frameBasket.ts';

/** At least so much of the height is taken to be free, however small the picture. */
const least = 0.4;

/**
 * Moves the picture so that its middle is half-way between what lies over its upper and its lower edge, and
 * tells which share of its height is free.
 */
export function useInset({ top, bottom }: Inset): RefObject<number> {
  const { camera, size, invalidate } = useThree();
  const { width, height } = size;
  const free = useRef(1);
  const share = Math.max(least, 1 - (top + bottom) / Math.max(1, height));
  free.current = share;
  useLayoutEffect(() => {
    if (!(camera instanceof PerspectiveCamera)) return;
    const down = top + bottom < (1 - least) * height ? (top - bottom) / 2 : 0;
    if (down === 0) camera.clearViewOffset();
    else camera.setViewOffset(width, height, 0, -down, width, height);
    invalidate();
  }, [camera, width, height, top, bottom, invalidate]);
  return free;
}
