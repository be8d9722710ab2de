/** The basket as files for other programs; what writes them is fetched when asked for. */
import type { Basket } from '../../model/basket.ts';
import type { TakePicture } from '../../scene/Snapshot.tsx';
import { download, fileStem } from '../save.ts';

/** Offers all strands as a model, `name.glb`. */
export async function saveGlb(basket: Basket): Promise<void> {
  const { glb } = await import('../../export/glb.ts');
  download(`${fileStem(basket.plan.name)}.glb`, 'model/gltf-binary', await glb(basket));
}

/** Offers base and wall as one solid, `name.stl`. */
export async function saveStl(basket: Basket): Promise<void> {
  const { stl } = await import('../../export/stl.ts');
  const { wallSolid } = await import('../../mesh/solid/wallSolid.ts');
  download(`${fileStem(basket.plan.name)}.stl`, 'model/stl', stl(wallSolid(basket)));
}

/** Offers side and end as a drawing, `name outlines.svg`. */
export async function saveSvg(basket: Basket): Promise<void> {
  const { outlinesSvg } = await import('../../export/outlinesSvg.ts');
  download(`${fileStem(basket.plan.name)} outlines.svg`, 'image/svg+xml', outlinesSvg(basket));
}

/** Offers a picture of the stage, `name.png`. */
export async function savePng({ plan }: Basket, take: TakePicture): Promise<void> {
  // the canvas is read at once: it forgets its picture once shown
  const canvas = take();
  const picture = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, 'image/png'));
  if (!picture) throw new Error('the browser gave no picture');
  download(`${fileStem(plan.name)}.png`, 'image/png', picture);
}
