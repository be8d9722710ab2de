import { useState } from 'react';
import { compareWords } from '#words/compare.ts';
import { planLetters } from '#words/planLetters.ts';
import { BlendSlider } from '../../charts/compare/BlendSlider.tsx';
import { presentComparison, presentSide, useComparison } from '../../keep/compareHere.ts';
import type { Side } from '../../keep/compareStudio.ts';
import { tellChanged } from '../../keep/keepHere.ts';
import { keepState } from '../../keep/shelf/keepState.ts';
import { addPlans } from '../../keep/shelf/shelfPlans.ts';
import type { Plan } from '../../plan/schema.ts';
import { savePlan } from '../save.ts';

const words = compareWords.blend;

interface Props {
  /** The third plan, and its planned girth by row, mm. */
  readonly plan: Plan;
  readonly girths: Float64Array;
  /** True where the second plan has another base girth: then its line is taken in proportion. */
  readonly isOnOwnBase: boolean;
}

/** The plan between the two, and ways to keep it. */
export function BlendCard({ plan, girths, isOnOwnBase }: Props) {
  const share = useComparison(({ share }) => share);
  const [told, setTold] = useState('');
  const keepAs = (side: Side) => {
    presentSide(side).open(plan);
    setTold(words.isNow(planLetters[side]));
  };
  const aside = async () => {
    const { db } = keepState.getState();
    if (!db) return setTold(words.noRoom);
    try {
      const [id] = await addPlans(db, [{ plan, versions: [], page: undefined }]);
      if (id) tellChanged(id, 1);
      setTold(words.isOnShelf);
    } catch {
      setTold(words.noRoom);
    }
  };
  return (
    <section className="blend-card" aria-label={words.title}>
      <BlendSlider
        share={share}
        girths={girths}
        unit={plan.display.unit}
        onShare={(to) => {
          setTold('');
          presentComparison().blendTo(to);
        }}
      />
      <div className="blend-buttons">
        <button type="button" onClick={() => keepAs('a')}>
          {words.keepAsA}
        </button>
        <button type="button" onClick={() => keepAs('b')}>
          {words.keepAsB}
        </button>
        <button type="button" onClick={aside}>
          {words.toShelf}
        </button>
        <button type="button" onClick={() => savePlan(plan)}>
          {words.toFile}
        </button>
      </div>
      <p className="soft blend-told" role="status">
        {told || (isOnOwnBase && words.onBaseOfA)}
      </p>
    </section>
  );
}
