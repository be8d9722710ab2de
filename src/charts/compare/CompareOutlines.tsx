import { useId } from 'react';
import type { FinishLines, OutlineLines } from '../OutlineDrawing.tsx';
import { flatPath } from '../OutlineDrawing.tsx';
import './compare.css';

/** A basket from one side, with the handle that stands over it. */
export interface ComparedOutline {
  readonly outline: OutlineLines;
  readonly finish: FinishLines;
}

export interface CompareOutlinesProps {
  readonly a: ComparedOutline | null;
  readonly b: ComparedOutline | null;
  /** Next to each other, or one over the other, always at one scale. */
  readonly layout: 'beside' | 'over';
  readonly title: string;
}

/** One side of both baskets as line drawings: the first in a whole line, the second dashed. */
export function CompareOutlines({ a, b, layout, title }: CompareOutlinesProps) {
  const id = useId();
  const shown = [a, b].filter((one) => one !== null);
  if (shown.length === 0) return null;
  const all = shown.flatMap(({ outline, finish }) => [outline, finish]);
  const left = Math.min(...all.map((one) => one.left));
  const right = Math.max(...all.map((one) => one.right));
  const top = Math.max(...all.map((one) => one.top));
  const bottom = Math.min(...shown.map(({ outline }) => outline.bottom));
  const gap = 0.08 * (right - left);
  const apart = layout === 'beside' ? right - left + gap : 0;
  const width = right - left + apart + 2 * gap;
  const sides = [
    a && ({ ...a, side: 'a', aside: 0 } as const),
    b && ({ ...b, side: 'b', aside: apart } as const),
  ].filter((one) => one !== null);
  const box = [left - gap, -top - gap, width, top - bottom + 2 * gap].join(' ');
  return (
    <figure className="outline">
      <svg className="outline-drawing" viewBox={box} role="img" aria-labelledby={id}>
        <title id={id}>{title}</title>
        <path className="outline-table" d={`M${left - gap},0H${right + apart + gap}`} />
        {sides.map((side) => (
          <Behind key={side.side} {...side} />
        ))}
        {sides.map((side) => (
          <OneOutline key={side.side} {...side} hasRows={layout === 'beside'} />
        ))}
      </svg>
      <figcaption className="outline-title">{title}</figcaption>
    </figure>
  );
}

interface SideProps extends ComparedOutline {
  readonly side: 'a' | 'b';
  /** How far to the right it is put, mm. */
  readonly aside: number;
}

/** The handle, and over it the ground of the wall, which hides what of it is behind. */
function Behind({ outline, finish, side, aside }: SideProps) {
  return (
    <g transform={`translate(${aside} 0)`}>
      {finish.handle.map((line) => (
        <path
          key={line.join()}
          className={`compare-handle side-${side}`}
          d={`${flatPath(line)}Z`}
        />
      ))}
      <path className="outline-ground" d={`${flatPath(outline.silhouette)}Z`} />
    </g>
  );
}

function OneOutline({ outline, side, aside, hasRows }: SideProps & { readonly hasRows: boolean }) {
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
