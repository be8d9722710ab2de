/** Vulgar fractions, as an inch rule has them: read and written. */

const glyphs: Readonly<Record<string, string>> = {
  '½': '1/2',
  '⅓': '1/3',
  '⅔': '2/3',
  '¼': '1/4',
  '¾': '3/4',
  '⅕': '1/5',
  '⅖': '2/5',
  '⅗': '3/5',
  '⅘': '4/5',
  '⅙': '1/6',
  '⅚': '5/6',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};

/** `½` as ` 1/2`, so that `3½` reads `3 1/2`; the fraction slash as a plain one. */
export function withPlainFractions(text: string): string {
  return text
    .replaceAll('⁄', '/')
    .replace(/[½⅓⅔¼¾⅕-⅚⅛-⅞]/g, (glyph) => ` ${glyphs[glyph] ?? glyph}`);
}

/** `3 1/2`, `3-1/2`, `11/16`: the number, or `undefined` if it is no such thing. */
export function fractionValue(text: string): number | undefined {
  const match = /^(?:(\d{1,6})(?:\s+|\s*-\s*))?(\d{1,6})\s*\/\s*(\d{1,6})$/.exec(text);
  if (!match) return undefined;
  const [, whole = '0', top = '', bottom = ''] = match;
  if (Number(bottom) === 0) return undefined;
  return Number(whole) + Number(top) / Number(bottom);
}

/** A number of 0 or more to the nearest sixteenth, reduced: `3 1/2`, `11/16`, `0`. */
export function mixedFraction(value: number): string {
  const sixteenths = Math.round(value * 16);
  const whole = Math.floor(sixteenths / 16);
  const rest = sixteenths % 16;
  if (rest === 0) return `${whole}`;
  const divisor = [8, 4, 2, 1].find((candidate) => rest % candidate === 0) ?? 1;
  const fraction = `${rest / divisor}/${16 / divisor}`;
  return whole === 0 ? fraction : `${whole} ${fraction}`;
}
