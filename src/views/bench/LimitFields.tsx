import { benchWords } from '#words/bench.ts';
import { unitWords } from '#words/units.ts';
import { withChange } from '../../keep/benchBook.ts';
import { changeBenchPage } from '../../keep/benchHere.ts';
import type { PullLimits } from '../../model/replan/pullLimits.ts';
import { usualLimits } from '../../model/replan/pullLimits.ts';
import type { Unit } from '../../plan/schema.ts';
import type { BenchWork } from './benchWork.ts';
import { Stepper } from './Stepper.tsx';

const { limits: words, steps } = benchWords;

/** Steps and ends of both limits; perGap in mm. */
const leans = { least: 5, most: 85, step: 5 };
const gaps = { least: 0.1, most: 6.4 };

/** How far the rows to come may go: folded away, since the usual limits do for most baskets. */
export function LimitFields({ work }: { readonly work: BenchWork }) {
  const { record, plan } = work;
  const { unit } = plan.display;
  const limits = record.limits ?? usualLimits;
  const isUsual = (one: PullLimits) =>
    one.lean === usualLimits.lean && Math.abs(one.perGap - usualLimits.perGap) < 1e-6;
  const put = (next: PullLimits) =>
    changeBenchPage(
      (page) => withChange(page, { limits: isUsual(next) ? null : next }),
      steps.limits,
    );
  return (
    <details className="replan-more">
      <summary>{words.title(limits.lean, gapText(limits.perGap, unit))}</summary>
      <div className="aims">
        <Stepper
          label={words.lean}
          value={`${limits.lean}°`}
          aside={asideOf(limits.lean === usualLimits.lean, `${usualLimits.lean}°`)}
          onStep={(by) => put({ ...limits, lean: within(limits.lean + by * leans.step, leans) })}
        />
        <Stepper
          label={words.perGap}
          value={gapText(limits.perGap, unit)}
          aside={asideOf(
            Math.abs(limits.perGap - usualLimits.perGap) < 1e-6,
            gapText(usualLimits.perGap, unit),
          )}
          onStep={(by) => {
            const step = stepOf(unit);
            const perGap = within((Math.round(limits.perGap / step) + by) * step, gaps);
            put({ ...limits, perGap });
          }}
        />
        <p className="soft">{words.ofPlan}</p>
      </div>
    </details>
  );
}

function asideOf(isUsual: boolean, usual: string): string {
  return isUsual ? words.usual : words.usually(usual);
}

function within(value: number, { least, most }: { least: number; most: number }): number {
  return Math.min(most, Math.max(least, value));
}

/** A sixty-fourth of an inch, or a tenth of a millimetre. */
function stepOf(unit: Unit): number {
  return unit === 'in' ? 25.4 / 64 : 0.1;
}

/** A change in one gap is finer than other lengths: sixty-fourths of an inch, or millimetres. */
function gapText(mm: number, unit: Unit): string {
  return unit === 'in'
    ? `${inchText(mm)} ${unitWords.length.in}`
    : `${mm.toFixed(1)} ${unitWords.length.mm}`;
}

function inchText(mm: number): string {
  const parts = Math.max(1, Math.round((64 * mm) / 25.4));
  const shared = Math.min(64, parts & -parts);
  return shared === 64 ? `${parts / 64}` : `${parts / shared}/${64 / shared}`;
}
