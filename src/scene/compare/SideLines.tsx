import { useMemo } from 'react';
import type { Basket } from '../../model/basket.ts';
import type { LineChoice } from './basketLines.ts';
import { basketLines } from './basketLines.ts';
import { FatLines } from './FatLines.tsx';
import type { SideLook } from './sideLook.ts';

interface Props {
  readonly basket: Basket;
  readonly look: SideLook;
}

interface MarkProps extends Props {
  /** Whether another basket's lines may run along these. */
  readonly isUnder: boolean;
}

/** How far the lines lie outside the strands, mm: those laid over lie over those of the basket itself. */
const clear = { woven: 1.5, over: 2 } as const;

/**
 * Base edge, widest row and rim of a basket that is drawn as woven, in its own colour and line: under
 * those of one that is laid over it wider than these, so that both are seen where they run along each other.
 */
export function MarkLines({ basket, look, isUnder }: MarkProps) {
  const segments = useLines(basket, 'marks', clear.woven);
  return <EdgedLines segments={segments} look={look} width={isUnder ? 7 : 3} edge={1} order={1} />;
}

/** A basket as some of its rows; what lies behind the other basket shows through it, fainter. */
export function OutlineLines({ basket, look }: Props) {
  const rows = useLines(basket, 'rows', clear.over);
  const marks = useLines(basket, 'marks', clear.over);
  const thin = { segments: rows, look, width: 1.5 };
  return (
    <>
      <FatLines {...thin} opacity={0.15} order={4} seenThrough />
      <FatLines {...thin} opacity={0.8} order={4} seenThrough={false} />
      <FatLines segments={marks} look={look} width={2.5} opacity={0.5} order={5} seenThrough />
      <EdgedLines segments={marks} look={look} width={2.5} edge={1} order={6} />
    </>
  );
}

function useLines(basket: Basket, choice: LineChoice, away: number): Float32Array {
  return useMemo(() => basketLines(basket, choice, away), [basket, choice, away]);
}

interface EdgedProps {
  readonly segments: Float32Array;
  readonly look: SideLook;
  /** Of the line, and of the edge on each side of it, px. */
  readonly width: number;
  readonly edge: number;
  readonly order: number;
}

/** Lines on an edge of their own, which tells them from any strand. */
function EdgedLines({ segments, look, width, edge, order }: EdgedProps) {
  const around = useMemo(() => ({ ...look, colour: look.edge, dash: longer(look.dash) }), [look]);
  const shared = { segments, opacity: 1, seenThrough: false };
  return (
    <>
      <FatLines {...shared} look={around} width={width + 2 * edge} order={order} />
      <FatLines {...shared} look={look} width={width} order={order + 1} />
    </>
  );
}

/** How far the edge of a dash goes beyond its end, cm. */
const beyond = 0.05;

/** Dashes that stand out at both ends; in the gaps one sees what lies under the line. */
function longer(dash: SideLook['dash']): SideLook['dash'] {
  return dash && [dash[0] + 2 * beyond, dash[1] - 2 * beyond, dash[2] + beyond];
}
