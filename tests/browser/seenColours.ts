/** Colours as they are seen: read from pictures of the page, whatever its rules say. */
import type { Locator, Page } from 'playwright-core';
import { pixelsOf } from './stagePicture.ts';

export interface SeenColours {
  /** The most frequent one, as `rgb(0 0 0)`. */
  readonly ground: string;
  /** How many differ from one another so that the eye tells them apart. */
  readonly count: number;
  /** Contrast to the ground, 1 … 21 as WCAG counts it, of the colour that stands out most. */
  readonly contrast: number;
}

interface Piece {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** The colours of a thing on the page, or of a `piece` of it, in shares of its width and height. */
export async function seenColours(
  page: Page,
  thing: Locator,
  piece: Piece = { x: 0, y: 0, width: 1, height: 1 },
): Promise<SeenColours> {
  const pixels = await pixelsOf(page, await thing.screenshot());
  return page.evaluate(
    ([{ data, width, height }, cut]) => {
      const counted = new Map<string, number>();
      let all = 0;
      for (let y = Math.floor(cut.y * height); y < (cut.y + cut.height) * height; y += 1) {
        for (let x = Math.floor(cut.x * width); x < (cut.x + cut.width) * width; x += 1) {
          const at = 4 * (y * width + x);
          // two shades that the eye hardly tells apart are one
          const key = [0, 1, 2].map((part) => (data[at + part] ?? 0) & 0xf0).join(' ');
          counted.set(key, (counted.get(key) ?? 0) + 1);
          all += 1;
        }
      }
      const light = (key: string) => {
        const [red = 0, green = 0, blue = 0] = key.split(' ').map((part) => {
          const value = Number(part) / 240;
          return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
        });
        return 0.2126 * red + 0.7152 * green + 0.0722 * blue + 0.05;
      };
      const seen = [...counted].toSorted(([, one], [, other]) => other - one);
      const ground = seen[0]?.[0] ?? '';
      const told = seen.filter(([, count]) => count >= Math.max(2, all / 500));
      const contrasts = told.map(([key]) => {
        const [one, other] = [light(key), light(ground)];
        return Math.max(one, other) / Math.min(one, other);
      });
      return { ground: `rgb(${ground})`, count: told.length, contrast: Math.max(1, ...contrasts) };
    },
    [pixels, piece] as const,
  );
}
