/** A base of another kind in the place of the one there is: as much girth, about as many ends. */
import { baseCorners, baseGirth, baseLift, baseSize, isRound } from './baseSize.ts';
import { baseEnds } from './counts.ts';
import { limits } from './limits.ts';
import type { Base, MatBase, OvalBase, Strand } from './schema.ts';

/** One end is left over for a split or an added stake. */
const mostEnds = limits.ends.most - 1;

/** Common practice, no source: border of an oval over its width, and its length over its width. */
const borderShare = 0.25;
const ovalRatio = 1.5;

/** Thickness of a plain board and depth of its slot, mm. Common practice, no source. */
const boardThickness = 10;
const slotDepth = 10;

/** Length and width of a base that is to be laid out, and the distance from end to end. Lengths mm. */
interface Outline {
  readonly girth: number;
  /** Length over width. */
  readonly ratio: number;
  readonly spacing: number;
  readonly stake: Strand;
}

/**
 * A base of kind `kind` that takes the place of `from`: the same stake and upsett, its girth, and its count
 * of ends as nearly as whole stakes allow. A base that is of that kind already is given back as it is.
 */
export function baseOfKind(kind: Base['kind'], from: Base): Base {
  if (from.kind === kind) return from;
  const { stake, upsett } = from;
  const girth = clamped(baseGirth(from), limits.girth.least, limits.girth.most);
  const ends = baseEnds(from);
  const { length, width } = baseSize(from);
  const outline = { girth, ratio: length / width, spacing: girth / ends, stake };
  const lifted = (base: Exclude<Base, { readonly kind: 'board' }>): Base => ({
    ...base,
    centreLift: liftFor(base, baseLift(from)),
  });
  const common = { stake, upsett, centreLift: 0 };
  if (kind === 'mat') {
    return lifted({ kind, ...common, corners: baseCorners(from), ...laidOut(outline, 0) });
  }
  if (kind === 'oval') {
    const ratio = isRound(from) ? ovalRatio : outline.ratio;
    return lifted({ kind, ...common, ...ovalOf({ ...outline, ratio }) });
  }
  if (kind === 'wheel') return lifted({ kind, ...common, ...wheelOf(girth, ends, stake) });
  return {
    kind,
    stake,
    upsett,
    thickness: boardThickness,
    slot: slotDepth,
    ends: clamped(ends, limits.boardEnds.least, mostEnds),
    ...boardOutline(from, girth),
  };
}

/**
 * Counts of stakes and the gap of a mat with a border of `border` mm round it, whose outline has the
 * girth asked for: 2·((a + b)·w + (a + b − 2)·g), and 2π times the border.
 */
function laidOut(
  { girth, ratio, spacing, stake }: Outline,
  border: number,
): Pick<MatBase, 'lengthwise' | 'crosswise'> & { readonly gap: number } {
  const { width } = stake;
  const half = Math.max(0, girth / 2 - Math.PI * border);
  const step = clamped(spacing, width, width + limits.gap.most);
  const { least, most } = limits.stakes;
  const count = (side: number) => clamped(Math.round((side + step - width) / step), least, most);
  let lengthwise = count(half / (1 + ratio));
  let crosswise = count((half * ratio) / (1 + ratio));
  const widest = limits.girth.most / 2 - Math.PI * border;
  const isTooMuch = () =>
    2 * (lengthwise + crosswise) > mostEnds || (lengthwise + crosswise) * width > widest;
  while (isTooMuch() && lengthwise + crosswise > 2 * least) {
    if (lengthwise > crosswise) lengthwise--;
    else crosswise--;
  }
  const stakes = lengthwise + crosswise;
  const gap = clamped((half - stakes * width) / (stakes - 2), limits.gap.least, limits.gap.most);
  return { lengthwise, crosswise, gap };
}

/** The ends that fan out at a corner stand over its rounding as far apart as the others do. */
function ovalOf(
  outline: Outline,
): Pick<OvalBase, 'lengthwise' | 'crosswise' | 'gap' | 'border' | 'fanned'> {
  const { girth, ratio, spacing } = outline;
  // girth = 2·(length + width) − (8 − 2π)·border, with length = ratio · width.
  const width = girth / (2 * (1 + ratio) - (8 - 2 * Math.PI) * borderShare);
  const border = clamped(borderShare * width, limits.border.least, limits.border.most);
  const mat = laidOut(outline, border);
  const room = Math.floor((mostEnds - 2 * (mat.lengthwise + mat.crosswise)) / 4);
  const arc = (Math.PI / 2) * border;
  const { least, most } = limits.fanned;
  const fanned = clamped(Math.round(arc / spacing) - 1, least, Math.min(most, Math.max(0, room)));
  return { ...mat, border, fanned };
}

/** Spokes lie on each other out to where they have room side by side, or half the way. */
function wheelOf(girth: number, ends: number, stake: Strand) {
  const least = limits.girth.least / Math.PI + 0.1;
  const diameter = clamped(girth / Math.PI, least, limits.diameter.most);
  const spokes = clamped(Math.floor(ends / 2), limits.spokes.least, limits.spokes.most);
  const sideBySide = (2 * spokes * stake.width) / Math.PI;
  const hub = Math.min(sideBySide, diameter / 2);
  const more = Math.min(ends, mostEnds) - 2 * spokes;
  return more < 1
    ? { spokes, hub, diameter }
    : { spokes, hub, diameter, added: { ends: more, at: (hub + diameter) / 2 } };
}

function boardOutline(from: Base, girth: number) {
  const { least, most } = limits.diameter;
  if (isRound(from)) {
    return { shape: 'round', length: clamped(girth / Math.PI, least, most) } as const;
  }
  const { length, width } = baseSize(from);
  // A rectangle is sharp where an oval is rounded: as much smaller as that makes it longer round.
  const share = girth / (2 * (length + width));
  return {
    shape: 'rectangle',
    length: clamped(share * length, least, most),
    width: clamped(share * width, least, most),
  } as const;
}

function liftFor(base: Base, lift: number): number {
  const { length, width } = baseSize(base);
  const { most, mostShare } = limits.centreLift;
  return Math.min(lift, most, mostShare * Math.min(length, width));
}

function clamped(value: number, least: number, most: number): number {
  return Math.min(Math.max(value, least), most);
}
