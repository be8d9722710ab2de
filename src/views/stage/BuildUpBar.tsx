import { useEffect, useId, useMemo, useState } from 'react';
import type { Basket } from '../../model/basket.ts';
import { stepWords } from '../../model/buildup/stepWords.ts';
import { weaverNeeds } from '../../model/quantity/weavers.ts';
import type { BuildUp } from './useBuildUp.ts';

interface Props {
  readonly build: BuildUp;
  /** The finished basket. */
  readonly basket: Basket;
  readonly onClose: () => void;
}

/** Time a row is shown for while playing, ms. */
const beat = 450;

/** The slider through the rows, with what is done at each. */
export function BuildUpBar({ build, basket, onClose }: Props) {
  const { rows, ready, row, problem, goTo, stop } = build;
  const id = useId();
  const [isPlaying, setPlaying] = useState(false);
  const [isStopped, setStopped] = useState(false);
  const splices = useMemo(
    () => weaverNeeds(basket).flatMap(({ spliceRows }) => spliceRows),
    [basket],
  );
  const words = row <= rows ? stepWords(basket.plan, row, splices) : [];
  useEffect(() => {
    if (!isPlaying) return;
    if (row >= rows) {
      setPlaying(false);
      return;
    }
    const next = setTimeout(() => {
      if (row < ready) goTo(row + 1);
    }, beat);
    return () => clearTimeout(next);
  }, [isPlaying, row, ready, rows, goTo]);
  const isSettling = ready < rows && !isStopped && !problem;
  return (
    <section className="build-bar" aria-label="Row by row">
      <div className="build-line">
        <button
          type="button"
          disabled={ready === 0}
          onClick={() => {
            if (!isPlaying && row >= ready) goTo(1);
            setPlaying(!isPlaying);
          }}
        >
          {isPlaying ? 'Pause' : 'Play'}
        </button>
        <label htmlFor={id} className="unseen">
          Row woven last
        </label>
        <input
          id={id}
          type="range"
          min={1}
          max={Math.max(1, ready)}
          step={1}
          value={row}
          disabled={ready === 0}
          aria-valuetext={`Row ${row} of ${rows}`}
          onChange={({ target }) => {
            setPlaying(false);
            goTo(Number(target.value));
          }}
        />
        <button type="button" onClick={onClose}>
          Done
        </button>
      </div>
      {isSettling && (
        <div className="build-line">
          <progress max={rows} value={ready} aria-label="Rows settled" />
          <span>
            {ready} of {rows} rows settled
          </span>
          <button
            type="button"
            onClick={() => {
              stop();
              setStopped(true);
            }}
          >
            Stop
          </button>
        </div>
      )}
      {problem && <p role="alert">{problem}</p>}
      <p className="build-words" aria-live="polite">
        {words.join(' ')}
      </p>
    </section>
  );
}
