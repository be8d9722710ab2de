import { useEffect, useRef, useState } from 'react';
import { compareWords } from '#words/compare.ts';
import { planLetters } from '#words/planLetters.ts';
import { presentSide, putInPlace, putKeptInPlace } from '../../keep/compareHere.ts';
import type { Side } from '../../keep/compareStudio.ts';
import { copyOf } from '../../keep/compareStudio.ts';
import { keepState } from '../../keep/shelf/keepState.ts';
import type { Card } from '../../keep/shelf/records.ts';
import { cardsOf } from '../../keep/shelf/shelfPlans.ts';
import { demos } from '../../plan/demo/demos.ts';
import { refusalText } from '../take/orTell.ts';
import { openBeside } from './openBeside.ts';

const words = compareWords.chooser;

/** So many plans of the shelf are offered, the latest changed first. */
const mostCards = 24;

/** Puts another plan in this place: a copy of the other one, one of the shelf, a class basket, a file. */
export function SideChooser({ side }: { readonly side: Side }) {
  const input = useRef<HTMLInputElement>(null);
  const [cards, setCards] = useState<readonly Card[]>([]);
  const other = side === 'a' ? 'b' : 'a';
  const letter = planLetters[side];
  useEffect(() => {
    let isWanted = true;
    const read = async ({ db } = keepState.getState()) => {
      const now = db ? await cardsOf(db) : [];
      if (isWanted) setCards(now.slice(0, mostCards));
    };
    void read();
    const leave = keepState.subscribe((state, before) => {
      if (state.changes !== before.changes) void read(state);
    });
    return () => {
      isWanted = false;
      leave();
    };
  }, []);
  const choose = async (value: string) => {
    const [kind, which] = [value.slice(0, 1), value.slice(2)];
    if (kind === 'c') putInPlace(side, copyOf(presentSide(other).plan));
    if (kind === 'f') input.current?.click();
    const demo = demos.find(({ id }) => kind === 'd' && id === which);
    if (demo) putInPlace(side, demo.plan);
    const problem = kind === 'k' ? await putKeptInPlace(side, which).catch(refusalText) : null;
    if (problem) presentSide(side).showProblem(problem);
  };
  return (
    <>
      <label className="side-chooser">
        <span className="unseen">{words.title(letter)}</span>
        <select value="" onChange={({ target }) => choose(target.value)}>
          <option value="" disabled>
            {words.choose}
          </option>
          <option value="c">{words.copy(planLetters[other])}</option>
          <option value="f">{words.file}</option>
          {cards.length > 0 && (
            <optgroup label={words.shelf}>
              {cards.map(({ id, name }) => (
                <option key={id} value={`k ${id}`}>
                  {name}
                </option>
              ))}
            </optgroup>
          )}
          <optgroup label={words.demos}>
            {demos.map(({ id, title }) => (
              <option key={id} value={`d ${id}`}>
                {title}
              </option>
            ))}
          </optgroup>
        </select>
      </label>
      <input
        ref={input}
        type="file"
        accept=".json,application/json"
        aria-label={words.openFile(letter)}
        tabIndex={-1}
        hidden
        onChange={({ target }) => {
          const file = target.files?.[0];
          if (file) openBeside(file, side);
          target.value = '';
        }}
      />
    </>
  );
}
