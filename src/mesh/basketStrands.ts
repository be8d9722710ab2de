/** All that a basket is made of, strand by strand. */
import type { Basket } from '../model/basket.ts';
import { setApart } from './apart/setApart.ts';
import { board } from './board.ts';
import { drawnPlaces } from './drawnPlaces.ts';
import { finishStrands } from './finish/finishStrands.ts';
import { flatRows } from './flatRows.ts';
import { levelledNormals, raiseToTable } from './onTable.ts';
import { stakeStrands } from './stakeStrands.ts';
import type { Strand } from './strandMesh.ts';
import { nodeNormals } from './surface.ts';
import { weaverStrands } from './weaverStrands.ts';

export interface BasketStrands {
  readonly stakes: readonly Strand[];
  readonly weavers: readonly Strand[];
  /** A board, or the rows woven flat in a base. */
  readonly base: readonly Strand[];
  /** Rim and handle. */
  readonly finish: readonly Strand[];
}

export interface Stage {
  /**
   * How far the stakes stand on over the last row, mm, where the basket is still being woven: then it has
   * no rim and no handle. Left out, it is finished.
   */
  readonly standing?: number;
  /**
   * While a value is dragged: fewer sections where a strand goes from one crossing to the next, and strands
   * that press on each other share a little room.
   */
  readonly light?: boolean;
}

/** Stakes and weavers, going over and under each other, and the finish. */
export function basketStrands(
  basket: Basket,
  { standing, light = false }: Stage = {},
): BasketStrands {
  const { net } = basket;
  const normals = levelledNormals(basket, nodeNormals(net, basket.positions));
  const drawn = { ...basket, positions: drawnPlaces(basket) };
  // a finished wall has its stakes cut level with the last row
  const over = standing ?? (net.rows.at(-1)?.pitch ?? 0) / 2;
  const stakes = stakeStrands(drawn, normals, over);
  const weavers = weaverStrands(drawn, normals);
  const strands = {
    stakes,
    weavers,
    base: [...board(drawn), ...flatRows(drawn, stakes)],
    finish: standing === undefined ? finishStrands(drawn, normals, stakes, weavers) : [],
  };
  // one that is being woven is seen for a moment only
  if (!light && standing === undefined) setApart(strands, basket);
  raiseToTable(Object.values(strands).flat());
  return strands;
}
