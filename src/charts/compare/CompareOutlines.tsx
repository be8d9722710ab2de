import { useId } from 'react';
import type { OutlineLines } from '../OutlineDrawing.tsx';
import { flatPath } from '../OutlineDrawing.tsx';
import './compare.css';

export interface CompareOutlinesProps {
  readonly a: OutlineLines | null;
  readonly b: OutlineLines | null;
  /** Next to each other, or one over the other, always at one scale. */
  readonly layout: 'beside' | 'over';
  readonly title: string;
}

/** One side of both baskets as line drawings: the first in a whole line, the second dashed. */
export function CompareOutlines({ a, b, layout, title }: CompareOutlinesProps) {
  const id = useId();
  const shown = [a, b].filter((one) => one !== null);
  if (shown.length === 0) return null;
  const left = Math.min(...shown.map((one) => one.left));
  const right = Math.max(...shown.map((one) => one.right));
  const top = Math.max(...shown.map((one) => one.top));
  const bottom = Math.min(...shown.map((one) => one.bottom));
  const gap = 0.08 * (right - left);
  const apart = layout === 'beside' ? right - left + gap : 0;
  const width = right - left + apart + 2 * gap;
  const box = [left - gap, -top - gap, width, top - bottom + 2 * gap].join(' ');
  return (
    <figure className="outline">
      <svg className="outline-drawing" viewBox={box} role="img" aria-labelledby={id}>
        <title id={id}>{title}</title>
        <path className="outline-table" d={`M${left - gap},0H${right + apart + gap}`} />
        {a && <OneOutline outline={a} side="a" aside={0} hasRows={layout === 'beside'} />}
        {b && <OneOutline outline={b} side="b" aside={apart} hasRows={layout === 'beside'} />}
      </svg>
      <figcaption className="outline-title">{title}</figcaption>
    </figure>
  );
}

interface OneOutlineProps {
  readonly outline: OutlineLines;
  readonly side: 'a' | 'b';
  /** How far to the right it is put, mm. */
  readonly aside: number;
  readonly hasRows: boolean;
}

function OneOutline({ outline, side, aside, hasRows }: OneOutlineProps) {
  const edge = `${flatPath(outline.silhouette)}Z`;
  return (
    <g transform={`translate(${aside} 0)`}>
      <path className={`compare-fill side-${side}`} d={edge} />
      {hasRows &&
        outline.rows.map(({ row, line }) => (
          <path key={row} className="outline-row" d={flatPath(line)} />
        ))}
      <path className={`compare-line side-${side}`} d={edge} />
    </g>
  );
}
