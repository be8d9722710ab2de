import { memo } from 'react';
import type { LineMark, Mark, Page, TextMark } from '../../export/pdf/page/mark.ts';
import { sheetFamily } from './sheetFonts.ts';

interface Props {
  readonly page: Page;
  readonly title: string;
}

/** Millimetres to a point. */
const point = 25.4 / 72;

/** A page as it will be printed, drawn from the same marks as the PDF. */
export const PagePicture = memo(function PagePicture({ page, title }: Props) {
  const { width, height, marks } = page;
  return (
    <svg
      className="print-page"
      viewBox={`0 0 ${width} ${height}`}
      role="img"
      aria-label={title}
      strokeLinecap="round"
      strokeLinejoin="round"
      fontFamily={`"${sheetFamily}", sans-serif`}
    >
      {marks.map((mark, at) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a page's marks never change places
        <MarkShape key={at} mark={mark} />
      ))}
    </svg>
  );
});

function MarkShape({ mark }: { readonly mark: Mark }) {
  return mark.kind === 'text' ? <TextShape mark={mark} /> : <LineShape mark={mark} />;
}

function TextShape({ mark: { x, y, text, size, bold, ink, turn } }: { readonly mark: TextMark }) {
  return (
    <text
      x={x}
      y={y}
      fill={ink}
      fontSize={size * point}
      fontWeight={bold ? 700 : 400}
      {...(turn === 0 ? {} : { transform: `rotate(${-turn} ${x} ${y})` })}
    >
      {text}
    </text>
  );
}

function LineShape({ mark }: { readonly mark: LineMark }) {
  const { points, closed, stroke, width, fill, dash } = mark;
  const look = {
    fill: fill ?? 'none',
    ...(stroke ? { stroke, strokeWidth: width } : {}),
    ...(dash.length > 0 ? { strokeDasharray: dash.join(' ') } : {}),
  };
  const path = points.map((value) => Math.round(value * 1000) / 1000).join(' ');
  return closed ? <polygon points={path} {...look} /> : <polyline points={path} {...look} />;
}
