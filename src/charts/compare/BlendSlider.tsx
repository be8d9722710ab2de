import { compareChartWords } from '#words/compareCharts.ts';
import { planLetters } from '#words/planLetters.ts';
import type { Unit } from '../../plan/schema.ts';
import { formatLength } from '../../plan/units.ts';
import { PlanSign } from './PlanSign.tsx';
import './compare.css';

export interface BlendSliderProps {
  /** 0 is the first girth line, 1 the second. */
  readonly share: number;
  /** Planned girth of the blend by row, mm; index 0 is the base. */
  readonly girths: Float64Array;
  readonly unit: Unit;
  readonly onShare: (share: number) => void;
}

const { blend: words } = compareChartWords;

/** Slides between the two girth lines, and says what the line between them comes to. */
export function BlendSlider({ share, girths, unit, onShare }: BlendSliderProps) {
  const percent = Math.round(100 * share);
  const widest = girths.reduce((best, girth, row) => (girth > (girths[best] ?? 0) ? row : best), 0);
  const length = (row: number) => formatLength(girths[row] ?? Number.NaN, unit);
  const rim = length(girths.length - 1);
  const comesTo =
    widest === 0
      ? words.comesToAtBase(length(widest), rim)
      : words.comesToAtRow(length(widest), widest, rim);
  return (
    <div className="blend-slider">
      <label htmlFor="blend-share">
        <PlanSign side="blend" /> {words.label}
      </label>
      <div className="blend-track">
        <span className="side-a">{planLetters.a}</span>
        <input
          id="blend-share"
          type="range"
          min={0}
          max={100}
          step={1}
          value={percent}
          aria-valuetext={words.value(percent, comesTo)}
          onChange={({ target }) => onShare(target.valueAsNumber / 100)}
        />
        <span className="side-b">{planLetters.b}</span>
        <output htmlFor="blend-share">{words.percent(percent)}</output>
      </div>
      <p className="soft blend-comes-to">{words.planned(comesTo)}</p>
    </div>
  );
}
