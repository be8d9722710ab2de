import { useEffect, useId, useMemo, useState } from 'react';
import { buildUpWords } from '#words/buildUp.ts';
import { listWords } from '#words/lists.ts';
import { stageWords } from '#words/stage.ts';
import type { Basket } from '../../model/basket.ts';
import { stepWords } from '../../model/buildup/stepWords.ts';
import { weaverNeeds } from '../../model/quantity/weavers.ts';
import type { Plan } from '../../plan/schema.ts';
import { formatLength } from '../../plan/units.ts';
import type { ShownBasket } from './stageShow.ts';
import { useBuildUp } from './useBuildUp.ts';

interface Props {
  readonly plan: Plan;
  /** The finished basket. */
  readonly basket: Basket;
  /** Told the basket to show: as it stands after the row chosen; null for the finished one. */
  readonly onShown: (shown: ShownBasket | null) => void;
  readonly onClose: () => void;
}

/** Time a row is shown for while playing, ms. */
const beat = 450;

/** The slider through the rows, with what is done at each. */
export function BuildUpBar({ plan, basket, onShown, onClose }: Props) {
  const { rows, ready, steps, row, shown, problem, goTo, stop, goOn, isSettling } =
    useBuildUp(plan);
  const id = useId();
  const [isPlaying, setPlaying] = useState(false);
  const splices = useMemo(
    () => weaverNeeds(basket).flatMap(({ spliceRows }) => spliceRows),
    [basket],
  );
  useEffect(() => onShown(shown), [shown, onShown]);
  useEffect(() => {
    if (!isPlaying) return;
    if (row >= steps && !isSettling) {
      setPlaying(false);
      return;
    }
    // while the next row is being settled, what is shown stays
    if (row >= steps) return;
    const next = setTimeout(() => goTo(row + 1), beat);
    return () => clearTimeout(next);
  }, [isPlaying, isSettling, row, steps, goTo]);
  const woven = basket.rows[row - 1];
  const words = woven
    ? [
        ...stepWords(plan, woven.row, splices),
        buildUpWords.tapeGirth(formatLength(woven.tapeGirth, plan.display.unit)),
      ]
    : [buildUpWords.finished[plan.handle.kind]];
  const play = () => {
    if (!isPlaying && row >= steps) goTo(1);
    setPlaying(!isPlaying);
  };
  return (
    <section className="build-bar" aria-label={stageWords.rowByRow}>
      <button type="button" disabled={ready === 0} onClick={play}>
        {isPlaying ? buildUpWords.pause : buildUpWords.play}
      </button>
      <label htmlFor={id} className="unseen">
        {buildUpWords.lastRow}
      </label>
      <input
        id={id}
        type="range"
        min={1}
        max={Math.max(1, steps)}
        step={1}
        value={row}
        disabled={ready === 0}
        aria-valuetext={
          woven ? buildUpWords.row(row, rows) : buildUpWords.finished[plan.handle.kind]
        }
        onChange={({ target }) => {
          setPlaying(false);
          goTo(Number(target.value));
        }}
      />
      {isSettling && (
        <span className="build-progress">
          <progress max={rows} value={ready} aria-label={buildUpWords.progress} />
          <span>{buildUpWords.settled(ready, rows)}</span>
          <button type="button" onClick={stop}>
            {buildUpWords.cancel}
          </button>
        </span>
      )}
      {!isSettling && ready < rows && !problem && (
        <span className="build-progress">
          {buildUpWords.stopped(ready)}
          <button type="button" onClick={goOn}>
            {buildUpWords.settleRest}
          </button>
        </span>
      )}
      <button type="button" onClick={onClose}>
        {buildUpWords.done}
      </button>
      {problem && <p role="alert">{problem}</p>}
      <p className="build-words" aria-live={isPlaying ? 'off' : 'polite'}>
        {listWords.sentences(words)}
      </p>
    </section>
  );
}
