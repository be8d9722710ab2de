/** What the stage shows beside the basket itself. */
import type { TintKind } from '../../mesh/rowTints.ts';

export interface StageShow {
  /** Dimensions and tape. */
  readonly sizes: boolean;
  /** Side and end as line drawings in place of the picture. */
  readonly outline: boolean;
  /** What the rows are coloured by; null for the strands' own colours. */
  readonly tint: TintKind | null;
}

export const plainStage: StageShow = { sizes: false, outline: false, tint: null };

export const tintTitles: Readonly<Record<TintKind, string>> = {
  lean: 'Lean of the wall',
  gap: 'Gap between stakes',
  strain: 'Strain of the weaver’s edge',
};
