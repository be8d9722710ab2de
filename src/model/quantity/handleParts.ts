/** The handle: ears, bow and wrap. */

import { partWords } from '#words/parts.ts';
import { quantityWords } from '#words/quantities.ts';
import { caneThickness } from '../../plan/strandSizes.ts';
import type { Measured } from '../basket.ts';
import { archLength } from './arch.ts';
import type { Part, Stock } from './part.ts';
import { undyed } from './stock.ts';

/** How the bow is wrapped. Lengths mm. */
export interface WrapNeed {
  readonly turns: number;
  readonly covered: number;
  readonly length: number;
}

export interface HandleNeed {
  readonly parts: readonly Omit<Part, 'length'>[];
  readonly wrap: WrapNeed | null;
  /** Distance between the bow's feet at the rim. */
  readonly span: number;
}

/** 7 in of tails. Common practice, no source. */
const tails = 177.8;
/** What a swinging bow is turned round its ear by, at each end: 2 in. Common practice, no source. */
const turnIn = 50.8;

/**
 * A swinging handle spans the width of the rim and hangs in two ears; a fixed one holds the spread
 * the plan gives and its legs go down the wall to the base. Ears are of the bow's own strand.
 */
export function handleNeed({ plan, net, summary }: Measured): HandleNeed {
  const { handle } = plan;
  if (handle.kind === 'none') return { parts: [], wrap: null, span: 0 };
  const { bow, rise, ear } = handle;
  const wall = net.rows.reduce((sum, { pitch }) => sum + pitch, 0);
  const span =
    handle.kind === 'fixed' ? handle.spread : summary.rim.width + 2 * plan.rim.hoop.thickness;
  const stock: Stock = { section: 'flat', ...bow, colour: undyed };
  const arch = archLength(span, rise);
  const wrap = wrapNeed(arch, 2 * (bow.width + bow.thickness), handle.wrap.width);
  const cane: Stock = {
    section: 'cane',
    width: handle.wrap.width,
    thickness: caneThickness(handle.wrap.width),
    colour: undyed,
  };
  const foot = handle.kind === 'fixed' ? wall : turnIn;
  const needed = ear ? archLength(ear.spread, ear.height) : 0;
  const ears = ear
    ? [{ part: partWords.ear, use: quantityWords.ears, count: 2, needed, stock }]
    : [];
  return {
    parts: [
      ...ears,
      { part: partWords.handleBow, count: 1, needed: arch + 2 * foot, stock },
      { part: partWords.handleWrap, count: 1, needed: wrap.length, stock: cane },
    ],
    wrap,
    span,
  };
}

/**
 * A strip of `width` wound edge to edge over `covered` mm of a bar `girth` mm round: each turn is the
 * long side of a triangle of girth and width. 12 in of a bar 2 1/2 in round in 1/4 in strip: 48 turns,
 * 121 in and the tails.
 */
export function wrapNeed(covered: number, girth: number, width: number): WrapNeed {
  const turns = Math.ceil(covered / width - 1e-9);
  return {
    turns,
    covered,
    length: turns * Math.hypot(girth, width) + tails,
  };
}
