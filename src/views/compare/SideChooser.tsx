import { useRef, useState } from 'react';
import { presentSide } from '../../keep/compareHere.ts';
import { plansAside } from '../../keep/compareShelf.ts';
import type { Side } from '../../keep/compareStudio.ts';
import { copyOf } from '../../keep/compareStudio.ts';
import { browserStore } from '../../keep/draft.ts';
import { demos } from '../../plan/demo/demos.ts';
import type { Plan } from '../../plan/schema.ts';
import { openFile } from '../openFile.ts';

/** Puts another plan in this place: a copy of the other one, one put aside, a class basket, a file. */
export function SideChooser({ side }: { readonly side: Side }) {
  const input = useRef<HTMLInputElement>(null);
  const [aside, setAside] = useState<readonly Plan[]>([]);
  const other = side === 'a' ? 'b' : 'a';
  const letter = side.toUpperCase();
  const refresh = () => setAside(plansAside(browserStore()));
  const choose = (value: string) => {
    const { open } = presentSide(side);
    const [kind, which] = [value.slice(0, 1), value.slice(2)];
    if (kind === 'c') open(copyOf(presentSide(other).plan));
    if (kind === 'f') input.current?.click();
    const plan =
      kind === 'k'
        ? aside[Number(which)]
        : demos.find(({ id }) => kind === 'd' && id === which)?.plan;
    if (plan) open(plan);
  };
  return (
    <>
      <label className="side-chooser">
        <span className="unseen">Put another plan in the place of {letter}</span>
        <select
          value=""
          onFocus={refresh}
          onPointerDown={refresh}
          onChange={({ target }) => choose(target.value)}
        >
          <option value="" disabled>
            Put here …
          </option>
          <option value="c">Copy of plan {other.toUpperCase()}</option>
          <option value="f">A plan from a file …</option>
          {aside.length > 0 && (
            <optgroup label="Plans put aside">
              {aside.map(({ name }, index) => (
                <option key={name} value={`k ${index}`}>
                  {name}
                </option>
              ))}
            </optgroup>
          )}
          <optgroup label="Baskets of the orchard class">
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
        aria-label={`Plan file to open as plan ${letter}`}
        tabIndex={-1}
        hidden
        onChange={({ target }) => {
          const file = target.files?.[0];
          if (file) openFile(file, presentSide(side));
          target.value = '';
        }}
      />
    </>
  );
}
