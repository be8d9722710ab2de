/** The comparison drawn as one PNG, with what is on the stage in it. */
import { compareWords } from '#words/compare.ts';
import { planLetters } from '#words/planLetters.ts';
import { comparePoster } from '../../export/pdf/compare/comparePoster.ts';
import { dayText } from '../../export/pdf/page/day.ts';
import type { LineMark, Mark, TextMark } from '../../export/pdf/page/mark.ts';
import type { Ruler } from '../../export/pdf/page/ruler.ts';
import type { TakePicture } from '../../scene/Snapshot.tsx';
import { sheetFamily } from '../print/sheetFonts.ts';
import type { Reading } from './useReading.ts';

/** Pixels to a millimetre of the poster, and across its pictures together. */
const fine = 8;
const inPoster = 1800;

const family = `"${sheetFamily}", sans-serif`;
const pointLength = 25.4 / 72;

/** Bytes of the picture, in the letters of the printed page that `ruler` measures. */
export async function posterPicture(
  reading: Reading,
  pictures: readonly TakePicture[],
  ruler: Ruler,
): Promise<Blob> {
  const canvas = document.createElement('canvas');
  const pen = canvas.getContext('2d');
  if (!pen) throw new Error(compareWords.files.noPen);
  const taken = pictures.map((take) => take(inPoster / pictures.length));
  const wide = taken.reduce((sum, { width }) => sum + width, 0);
  const high = Math.max(0, ...taken.map(({ height }) => height));
  const aspect = wide > 0 && high > 0 ? wide / high : null;
  const poster = comparePoster(reading, ruler, aspect, dayText(new Date()));
  canvas.width = Math.round(poster.width * fine);
  canvas.height = Math.round(poster.height * fine);
  pen.scale(fine, fine);
  pen.fillStyle = '#ffffff';
  pen.fillRect(0, 0, poster.width, poster.height);
  if (poster.pictures) placeIn(pen, taken, poster.pictures);
  for (const mark of poster.marks) drawMark(pen, mark);
  return new Promise((resolve, reject) => {
    canvas.toBlob((blob) => {
      if (blob) resolve(blob);
      else reject(new Error(compareWords.files.noPicture));
    }, 'image/png');
  });
}

/** Pictures next to each other in the middle of a place, each with its letter. */
function placeIn(
  pen: CanvasRenderingContext2D,
  pictures: readonly HTMLCanvasElement[],
  [x, y, width, height]: readonly [number, number, number, number],
): void {
  const wide = pictures.reduce((sum, picture) => sum + picture.width, 0);
  const scale = Math.min(width / wide, height / Math.max(1, ...pictures.map((one) => one.height)));
  let left = x + (width - scale * wide) / 2;
  pictures.forEach((picture, at) => {
    pen.drawImage(picture, left, y, scale * picture.width, scale * picture.height);
    if (pictures.length > 1) {
      pen.fillStyle = '#1e2427';
      pen.font = `bold 6px ${family}`;
      pen.fillText(at === 0 ? planLetters.a : planLetters.b, left + 4, y + 8);
    }
    left += scale * picture.width;
  });
}

function drawMark(pen: CanvasRenderingContext2D, mark: Mark): void {
  if (mark.kind === 'text') drawText(pen, mark);
  else drawLine(pen, mark);
}

function drawText(
  pen: CanvasRenderingContext2D,
  { x, y, text, size, bold, ink, turn }: TextMark,
): void {
  pen.save();
  pen.translate(x, y);
  pen.rotate((-turn * Math.PI) / 180);
  pen.fillStyle = ink;
  pen.font = `${bold ? 'bold ' : ''}${size * pointLength}px ${family}`;
  pen.fillText(text, 0, 0);
  pen.restore();
}

function drawLine(pen: CanvasRenderingContext2D, mark: LineMark): void {
  const { points, closed, stroke, width, fill, dash } = mark;
  pen.beginPath();
  for (let at = 0; at + 1 < points.length; at += 2) {
    pen.lineTo(points[at] ?? 0, points[at + 1] ?? 0);
  }
  if (closed) pen.closePath();
  if (fill) {
    pen.fillStyle = fill;
    pen.fill();
  }
  if (!stroke) return;
  pen.strokeStyle = stroke;
  pen.lineWidth = width;
  pen.lineJoin = 'round';
  pen.setLineDash([...dash]);
  pen.stroke();
}
