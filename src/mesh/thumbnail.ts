import type { Basket } from '../model/basket.ts';
import { outline } from './outline.ts';
import type { Thumbnail } from './thumbnailBox.ts';
import { drawnInBox } from './thumbnailBox.ts';

/** The picture of a settled basket for the shelf. */
export function thumbnail(basket: Basket): Thumbnail {
  return drawnInBox(outline(basket, 'side'));
}
