import { useState } from 'react';
import type { Extent } from './frameBasket.ts';

/**
 * How far the basket reaches, cm, for lights and table: it follows the basket in large steps only,
 * so that they hold still while a value is dragged.
 */
export function useReach(extent: Extent | null): number {
  const [reach, setReach] = useState(15);
  const wanted = extent ? Math.max(extent.half[0], 2 * extent.half[1], extent.half[2]) : reach;
  if (wanted > 1.15 * reach || wanted < 0.7 * reach) {
    setReach(wanted);
    return wanted;
  }
  return reach;
}
