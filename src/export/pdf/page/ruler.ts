/** How wide a text comes out in the sheet's fonts, and which characters they have. */
import fontkit from '@pdf-lib/fontkit';

/** Two TrueType files whose licence lets them be embedded. */
export interface Fonts {
  readonly regular: Uint8Array;
  readonly bold: Uint8Array;
}

export interface Ruler {
  /** Width of `text` at `size` points, mm. */
  readonly width: (text: string, size: number, bold: boolean) => number;
  /** `text` with what the fonts cannot draw written as an empty square, and all blanks as a space. */
  readonly drawable: (text: string) => string;
}

const pointLength = 25.4 / 72;
const missing = '□';

/** A ruler of these fonts. Letters are set without kerning and ligatures, as the PDF sets them. */
export function rulerOf(fonts: Fonts): Ruler {
  const faces = [fontkit.create(fonts.regular), fontkit.create(fonts.bold)] as const;
  const known = [new Map<string, number>(), new Map<string, number>()] as const;
  const advance = (character: string, face: 0 | 1): number => {
    const found = known[face].get(character);
    if (found !== undefined) return found;
    const font = faces[face];
    const glyph = font.glyphForCodePoint(character.codePointAt(0) ?? 0);
    const width = glyph.advanceWidth / font.unitsPerEm;
    known[face].set(character, width);
    return width;
  };
  return {
    width(text, size, bold) {
      let sum = 0;
      for (const character of text) sum += advance(character, bold ? 1 : 0);
      return sum * size * pointLength;
    },
    drawable(text) {
      const has = (character: string) =>
        faces.every((face) => face.hasGlyphForCodePoint(character.codePointAt(0) ?? 0));
      return Array.from(text.normalize('NFC').replace(/[\s\p{Cc}\p{Cf}]+/gu, ' '))
        .map((character) => (has(character) ? character : missing))
        .join('')
        .trim();
    },
  };
}

/** The same ruler, which remembers what it was asked: for one file, whose texts are set again and again. */
export function remembering(ruler: Ruler): Ruler {
  const widths = new Map<string, number>();
  const texts = new Map<string, string>();
  return {
    width(text, size, bold) {
      const key = `${size} ${bold} ${text}`;
      const known = widths.get(key) ?? ruler.width(text, size, bold);
      widths.set(key, known);
      return known;
    },
    drawable(text) {
      const known = texts.get(text) ?? ruler.drawable(text);
      texts.set(text, known);
      return known;
    },
  };
}
