/** The basket as files that other programs open: all strands, and the wall as one solid. */
import { glb } from '../export/glb.ts';
import { outlinesSvg } from '../export/outlinesSvg.ts';
import { stl } from '../export/stl.ts';
import { wallSolid } from '../mesh/solid/wallSolid.ts';
import type { Basket } from '../model/basket.ts';

/** `shape.glb`, `shape.stl` and `outlines.svg` by name. */
export async function shapes(
  basket: Basket,
): Promise<Readonly<Record<string, string | Uint8Array>>> {
  return {
    'shape.glb': await glb(basket),
    'shape.stl': stl(wallSolid(basket)),
    'outlines.svg': outlinesSvg(basket),
  };
}
