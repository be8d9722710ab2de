import { planLetters } from '#words/planLetters.ts';
import './compare.css';

export type SignedSide = 'a' | 'b' | 'blend';

/** A plan's letter in its colour, with a piece of its line: whole, dashed, or dotted for the blend. */
export function PlanSign({ side }: { readonly side: SignedSide }) {
  return (
    <span className={`plan-sign side-${side}`}>
      <span className="plan-letter">{planLetters[side]}</span>
      <svg width="30" height="10" viewBox="0 0 30 10" aria-hidden="true">
        <line className="compare-line" x1="2" y1="5" x2="28" y2="5" />
      </svg>
    </span>
  );
}
