/** Everything one basket takes, read off the settled basket. Lengths mm, weights g. */
import { quantityWords } from '#words/quantities.ts';
import { cutStep } from '../../plan/cutStep.ts';
import type { Measured } from '../basket.ts';
import type { WrapNeed } from './handleParts.ts';
import { handleNeed } from './handleParts.ts';
import { strandGrams } from './mass.ts';
import type { Part, Stock } from './part.ts';
import { rimNeed } from './rimParts.ts';
import { roundedUp } from './roundedUp.ts';
import { undyed } from './stock.ts';
import type { WeaverNeed } from './weavers.ts';
import { weaverNeeds } from './weavers.ts';

export interface Quantities {
  /** What cut lengths are rounded up to. */
  readonly step: number;
  /** Stakes (and fillers, spokes … whatever the base is of) by part. */
  readonly stakes: readonly Part[];
  /** Weavers by band. */
  readonly weavers: readonly WeaverNeed[];
  /** Hoops, filler, lasher; ears, bow and wrap. */
  readonly rim: readonly Part[];
  readonly handle: readonly Part[];
  readonly rimLap: number;
  readonly rimThinned: number;
  readonly lashes: number;
  readonly wrap: WrapNeed | null;
  readonly handleSpan: number;
  /** Strand by size and colour: length used in the basket, without waste, and what it weighs. */
  readonly materials: readonly Material[];
  /** Of the finished basket. */
  readonly grams: number;
}

/** One size and colour of strand. */
export interface Material {
  readonly stock: Stock;
  /** What it is for: `stakes`, `rows 1–20`, `hoops`. */
  readonly uses: readonly string[];
  readonly length: number;
  readonly grams: number;
}

/** The cut list, the weavers and the materials of one basket. */
export function quantities(basket: Measured): Quantities {
  const { plan } = basket;
  const step = cutStep(plan);
  const cut = (part: Omit<Part, 'length'>): Part => ({
    ...part,
    length: roundedUp(part.needed, step),
  });
  const { thickness } = plan.base.stake;
  const stakes = basket.cutList.map(({ part, count, length, section, width }) =>
    cut({
      part,
      count,
      needed: length,
      stock: { section: sectionNamed(section), width, thickness, colour: undyed },
    }),
  );
  const weavers = weaverNeeds(basket);
  const rim = rimNeed(basket);
  const handle = handleNeed(basket);
  const [rimParts, handleParts] = [rim.parts.map(cut), handle.parts.map(cut)];
  const materials = gathered([
    ...stakes.map((part) => used(part, quantityWords.stakes)),
    ...weavers.map(({ stock, length, first, last }) => ({
      stock,
      length,
      use: quantityWords.rows(first, last),
    })),
    ...[...rimParts, ...handleParts].map((part) => used(part, part.use ?? part.part)),
  ]);
  return {
    step,
    stakes,
    weavers,
    rim: rimParts,
    handle: handleParts,
    rimLap: rim.lap,
    rimThinned: rim.thinned,
    lashes: rim.lashes,
    wrap: handle.wrap,
    handleSpan: handle.span,
    materials,
    grams: materials.reduce((sum, { grams }) => sum + grams, 0),
  };
}

function used({ count, length, stock }: Part, use: string) {
  return { stock, length: count * length, use };
}

/** Strand of one size and colour taken together, in the order of first use. */
function gathered(
  pieces: readonly { readonly stock: Stock; readonly length: number; readonly use: string }[],
): Material[] {
  const bySize = new Map<string, typeof pieces>();
  for (const piece of pieces) {
    const { section, width, thickness, colour } = piece.stock;
    const key = [section, width, thickness, colour].join(' ');
    bySize.set(key, [...(bySize.get(key) ?? []), piece]);
  }
  return [...bySize.values()].flatMap((same) => {
    const [first] = same;
    if (!first) return [];
    const length = same.reduce((sum, piece) => sum + piece.length, 0);
    const uses = [...new Set(same.map(({ use }) => use))];
    return [{ stock: first.stock, uses, length, grams: strandGrams(first.stock, length) }];
  });
}

function sectionNamed(name: string): Stock['section'] {
  const sections = ['flat', 'flat-oval', 'half-round', 'round'] as const;
  return sections.find((section) => section === name) ?? 'flat';
}
