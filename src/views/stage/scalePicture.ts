/** The scale of the rows' colours in a saved picture: there is no page round it to say what they stand for. */
import { stageWords } from '#words/stage.ts';
import { viridis } from '../../mesh/rowTints.ts';
import type { TintScale } from './tintScale.ts';
import { endsOf } from './tintScale.ts';

/** Of the picture's longer side: width of the scale, and of the letters. */
const share = { width: 0.2, letters: 0.015 } as const;

/** Draws the scale into the lower right corner, in the colours of the page. */
export function drawScale(canvas: HTMLCanvasElement, scale: TintScale): void {
  const pen = canvas.getContext('2d');
  if (!pen) return;
  const style = getComputedStyle(document.documentElement);
  const [card, ink] = [style.getPropertyValue('--card'), style.getPropertyValue('--ink')];
  const longest = Math.max(canvas.width, canvas.height);
  const letters = share.letters * longest;
  const wide = Math.min(share.width * longest, 0.5 * canvas.width);
  const [pad, gap] = [0.7 * letters, 0.4 * letters];
  const ramp = { high: 0.9 * letters, wide: wide - 2 * pad };
  const high = 2 * pad + 2 * letters + 2 * gap + ramp.high;
  pen.save();
  pen.translate(canvas.width - wide - letters, canvas.height - high - letters);
  pen.fillStyle = card;
  pen.fillRect(0, 0, wide, high);
  pen.translate(pad, pad);
  pen.fillStyle = ink;
  pen.font = [`${letters}px`, getComputedStyle(document.body).fontFamily].join(' ');
  pen.textBaseline = 'top';
  pen.fillText(stageWords.tintTitles[scale.kind], 0, 0, ramp.wide);
  const [least, most] = endsOf(scale);
  const under = letters + 2 * gap + ramp.high;
  pen.fillText(least, 0, under, ramp.wide / 2);
  pen.textAlign = 'right';
  pen.fillText(most, ramp.wide, under, ramp.wide / 2);
  const colours = pen.createLinearGradient(0, 0, ramp.wide, 0);
  viridis.forEach((stop, at) => {
    colours.addColorStop(at / (viridis.length - 1), `rgb(${stop.join(' ')})`);
  });
  pen.fillStyle = colours;
  pen.fillRect(0, letters + gap, ramp.wide, ramp.high);
  pen.restore();
}
