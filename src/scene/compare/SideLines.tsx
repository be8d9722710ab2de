import { useMemo } from 'react';
import type { Basket } from '../../model/basket.ts';
import { basketLines } from './basketLines.ts';
import { FatLines } from './FatLines.tsx';
import type { SideLook } from './sideLook.ts';

interface Props {
  readonly basket: Basket;
  readonly look: SideLook;
}

/** Base edge, widest row and rim of a basket that is drawn as woven, in its own colour and line. */
export function MarkLines({ basket, look }: Props) {
  const segments = useMemo(() => basketLines(basket, 'marks'), [basket]);
  return <FatLines segments={segments} look={look} width={3} opacity={1} seenThrough={false} />;
}

/** A basket as some of its rows and its ends; what lies behind the other basket shows through it, fainter. */
export function OutlineLines({ basket, look }: Props) {
  const ends = useMemo(() => basketLines(basket, 'ends', 0), [basket]);
  const rows = useMemo(() => basketLines(basket, 'rows', 0), [basket]);
  const marks = useMemo(() => basketLines(basket, 'marks', 0), [basket]);
  return (
    <>
      <FatLines segments={ends} look={look} width={1} opacity={0.14} seenThrough />
      <FatLines segments={rows} look={look} width={1.5} opacity={0.2} seenThrough />
      <FatLines segments={rows} look={look} width={1.5} opacity={0.7} seenThrough={false} />
      <FatLines segments={marks} look={look} width={3} opacity={0.4} seenThrough />
      <FatLines segments={marks} look={look} width={3} opacity={1} seenThrough={false} />
    </>
  );
}
