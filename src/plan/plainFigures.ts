/** Figures and signs as other keyboards write them, put into plain ones. */

/** Signs that stand for a plain one: Japanese commas and points, long marks, units in one sign. */
const plain: Readonly<Record<string, string>> = {
  '、': ',',
  '､': ',',
  '。': '.',
  '｡': '.',
  '・': '.',
  ー: '-',
  ｰ: '-',
  '\u3000': ' ',
  '\u00a0': ' ',
  '\u202f': ' ',
  '㎜': 'mm',
  '㎝': 'cm',
  '㏌': 'in',
};

/** How far the full-width letters, figures and signs lie from their plain ones in Unicode. */
const fullWidth = 0xfee0;

/** `１２．５` as `12.5`, `１２、５　㎝` as `12,5 cm`; a text in plain figures stays as it is. */
export function withPlainFigures(text: string): string {
  return text
    .replace(/[！-～]/g, (sign) => String.fromCharCode(sign.charCodeAt(0) - fullWidth))
    .replace(/[、､。｡・ーｰ\u3000\u00a0\u202f㎜㎝㏌]/g, (sign) => plain[sign] ?? sign);
}
