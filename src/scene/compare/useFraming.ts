import { useMemo, useState } from 'react';
import type { Extent } from '../frameBasket.ts';
import { extent } from '../frameBasket.ts';
import type { ShownSide } from './ComparedStage.tsx';

type Shape = Pick<ShownSide, 'basket' | 'mesh'> | undefined;

interface Framing {
  /** Of both baskets as they are now. */
  readonly now: Extent | null;
  /** Of both when they were last looked at anew: it holds still while a value is dragged. */
  readonly looked: Extent | null;
  /** Changes when the eye is to look anew. */
  readonly nonce: number;
}

/**
 * What the eyes must have in the picture. They look anew with another `nonce`, when the first basket
 * of a side is there, and when that of a plan that was opened is: `opened` counts those plans.
 */
export function useFraming(a: Shape, b: Shape, nonce: number, opened: number): Framing {
  const [last, setLast] = useState({ a, b, opened, isWaiting: false, arrivals: 0 });
  const isFirst = (!last.a && a !== undefined) || (!last.b && b !== undefined);
  const isNew = last.a !== a || last.b !== b;
  if (opened !== last.opened) setLast({ ...last, opened, isWaiting: true });
  else if (isFirst || (isNew && last.isWaiting)) {
    setLast({ a, b, opened, isWaiting: false, arrivals: last.arrivals + 1 });
  } else if (isNew) setLast({ ...last, a, b });

  const now = useMemo(() => together(a, b), [a, b]);
  const looks = `${nonce} ${last.arrivals}`;
  // biome-ignore lint/correctness/useExhaustiveDependencies: held until the next look
  const looked = useMemo(() => now, [looks]);
  return { now, looked, nonce: nonce * 1000 + last.arrivals };
}

function together(a: Shape, b: Shape): Extent | null {
  const [one, other] = [a, b].map((shape) =>
    shape ? extent(shape.basket, [shape.mesh.fittings.positions]).positions : new Float64Array(),
  ) as [Float64Array, Float64Array];
  const positions = new Float64Array(one.length + other.length);
  positions.set(one);
  positions.set(other, one.length);
  return positions.length > 0 ? extent({ positions }) : null;
}
