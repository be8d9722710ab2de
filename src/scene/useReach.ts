import { useLayoutEffect, useState } from 'react';
import type { Extent } from './frameBasket.ts';
import { extent } from './frameBasket.ts';
import type { Live } from './live.ts';
import type { StageShape } from './stageShape.ts';
import { extentOf } from './stageShape.ts';

type Sized = Pick<Extent, 'half'>;

const first = 15;

/**
 * How far the basket reaches, cm, for lights and table: it follows the basket in large steps only,
 * so that they hold still while a value is dragged.
 */
export function useReach(extent: Sized | null): number {
  const [reach, setReach] = useState(first);
  const next = followed(reach, extent);
  if (next !== reach) setReach(next);
  return next;
}

/** The same for a basket that changes past React: under a hand it only grows. */
export function useLiveReach(shapes: Live<StageShape | null>): number {
  const [reach, setReach] = useState(() => reachOf(shapes.get(), first));
  useLayoutEffect(() => {
    const follow = () => setReach((last) => reachOf(shapes.get(), last));
    follow();
    return shapes.subscribe(follow);
  }, [shapes]);
  return reach;
}

function reachOf(shape: StageShape | null, reach: number): number {
  if (!shape) return reach;
  // of one that follows a hand the nodes are enough
  return shape.isAtRest
    ? followed(reach, extentOf(shape))
    : Math.max(reach, followed(reach, extent(shape.basket)));
}

function followed(reach: number, size: Sized | null): number {
  const wanted = size ? Math.max(size.half[0], 2 * size.half[1], size.half[2]) : reach;
  return wanted > 1.15 * reach || wanted < 0.7 * reach ? wanted : reach;
}
