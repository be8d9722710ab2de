/** What the stage shows beside the basket itself. */
import type { BasketMesh } from '../../mesh/basketMesh.ts';
import type { TintKind } from '../../mesh/rowTints.ts';
import type { Basket } from '../../model/basket.ts';

/** A basket and its strands as they are drawn. */
export interface ShownBasket {
  readonly basket: Basket;
  readonly mesh: BasketMesh;
}

export interface StageShow {
  /** Dimensions and tape. */
  readonly sizes: boolean;
  /** Side and end as line drawings in place of the picture. */
  readonly outline: boolean;
  /** What the rows are coloured by; null for the strands' own colours. */
  readonly tint: TintKind | null;
}

export const plainStage: StageShow = { sizes: false, outline: false, tint: null };
