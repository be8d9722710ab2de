import { useState } from 'react';
import { BlendSlider } from '../../charts/compare/BlendSlider.tsx';
import { presentComparison, presentSide, useComparison } from '../../keep/compareHere.ts';
import type { Side } from '../../keep/compareStudio.ts';
import { tellChanged } from '../../keep/keepHere.ts';
import { keepState } from '../../keep/shelf/keepState.ts';
import { addPlans } from '../../keep/shelf/shelfPlans.ts';
import type { Plan } from '../../plan/schema.ts';
import { savePlan } from '../save.ts';

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
    setTold(`The blend is now plan ${side.toUpperCase()}; undo brings the old one back.`);
  };
  const aside = async () => {
    const { db } = keepState.getState();
    const noRoom = 'This browser would not keep it, so save it as a file.';
    if (!db) return setTold(noRoom);
    try {
      const [id] = await addPlans(db, [{ plan, versions: [], page: undefined }]);
      if (id) tellChanged(id, 1);
      setTold('It is on the shelf, and in the list “Put here …” of both plans.');
    } catch {
      setTold(noRoom);
    }
  };
  return (
    <section className="blend-card" aria-label="Blend of the two plans">
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
          Keep as A
        </button>
        <button type="button" onClick={() => keepAs('b')}>
          Keep as B
        </button>
        <button type="button" onClick={aside}>
          Put on the shelf
        </button>
        <button type="button" onClick={() => savePlan(plan)}>
          Save as file
        </button>
      </div>
      <p className="soft blend-told" role="status">
        {told || (isOnOwnBase && 'On the base of A, with the line of B in proportion to it.')}
      </p>
    </section>
  );
}
