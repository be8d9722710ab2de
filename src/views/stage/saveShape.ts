/** The basket as files for other programs; what writes them is fetched when asked for. */
import { appWords } from '#words/app.ts';
import { stageWords } from '#words/stage.ts';
import type { Basket } from '../../model/basket.ts';
import type { TakePicture } from '../../scene/Snapshot.tsx';
import { download, fileStem } from '../save.ts';
import type { TintScale } from './tintScale.ts';

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
  download(
    appWords.fileName.outlines(fileStem(basket.plan.name)),
    'image/svg+xml',
    outlinesSvg(basket),
  );
}

/** Pixels along the longer side of a saved picture, or more. */
const fine = 2000;

/** Offers a picture of the stage, `name.png`, with what the colours of its rows stand for. */
export async function savePng(
  { plan }: Basket,
  take: TakePicture,
  scale: TintScale | null,
): Promise<void> {
  const canvas = take(fine);
  if (scale) (await import('./scalePicture.ts')).drawScale(canvas, scale);
  const picture = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, 'image/png'));
  if (!picture) throw new Error(stageWords.save.noPicture);
  download(`${fileStem(plan.name)}.png`, 'image/png', picture);
}
