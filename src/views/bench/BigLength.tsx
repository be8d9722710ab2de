import type { CSSProperties } from 'react';
import { unitWords } from '#words/units.ts';
import type { Unit } from '../../plan/schema.ts';
import { formatLength } from '../../plan/units.ts';

interface Props {
  readonly mm: number;
  readonly unit: Unit;
  readonly className: string;
  /** Writes + or − in front. */
  readonly signed?: boolean;
}

/** A length in large figures: the fraction of an inch stands small and stacked, as on a rule. */
export function BigLength({ mm, unit, className, signed = false }: Props) {
  const plain = formatLength(Math.abs(mm), unit, { withUnit: false });
  const { whole, top, bottom } = parts(plain);
  const sign = signed && plain !== '0' ? signOf(mm) : '';
  const width = widthOf(`${sign}${whole}`, Math.max(top?.length ?? 0, bottom?.length ?? 0), unit);
  return (
    <span className={`big-length ${className}`} style={{ '--wide': width } as CSSProperties}>
      <span className="unseen">
        {sign}
        {formatLength(Math.abs(mm), unit)}
      </span>
      <span aria-hidden="true">
        {sign}
        {whole}
        {top && (
          <span className="big-fraction">
            <span>{top}</span>
            <span>{bottom}</span>
          </span>
        )}
        <span className="big-unit">{unitWords.length[unit]}</span>
      </span>
    </span>
  );
}

function signOf(mm: number): string {
  return mm < 0 ? '−' : '+';
}

/** `28 11/16` in its three parts; what is no fraction is all whole. */
function parts(text: string) {
  const [, whole = '', top, bottom] = /^(?:(\d+) )?(\d+)\/(\d+)$/.exec(text) ?? [];
  return top ? { whole, top, bottom } : { whole: text };
}

/** About how wide it is in its own letter height, so that the style can keep it on the screen. */
function widthOf(plain: string, fraction: number, unit: Unit): number {
  const figures = [...plain].reduce((sum, one) => sum + (one === '.' ? 0.4 : 0.72), 0);
  return (
    figures +
    (fraction > 0 ? 0.1 + fraction * 0.36 : 0) +
    0.08 +
    unitWords.length[unit].length * 0.19
  );
}
