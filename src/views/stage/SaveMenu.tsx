import { useEffect, useRef, useState } from 'react';
import type { Basket } from '../../model/basket.ts';
import type { TakePicture } from '../../scene/Snapshot.tsx';
import { saveGlb, savePng, saveStl, saveSvg } from './saveShape.ts';

interface Props {
  readonly basket: Basket;
  /** Takes a picture of the stage; null where there is none. */
  readonly onPicture: TakePicture | null;
}

/** The basket as files: picture, drawing, model, solid. */
export function SaveMenu({ basket, onPicture }: Props) {
  const menu = useRef<HTMLDetailsElement>(null);
  const [problem, setProblem] = useState<string | null>(null);
  useEffect(() => {
    const { current: own } = menu;
    const shut = () => {
      if (own) own.open = false;
    };
    const outside = ({ target }: Event) => {
      if (!(target instanceof Node && own?.contains(target))) shut();
    };
    const onKey = ({ key }: KeyboardEvent) => {
      if (key !== 'Escape' || !own?.open) return;
      shut();
      own.querySelector('summary')?.focus();
    };
    const listening = new AbortController();
    const { signal } = listening;
    document.addEventListener('pointerdown', outside, { signal });
    document.addEventListener('focusin', outside, { signal });
    document.addEventListener('keydown', onKey, { signal });
    return () => listening.abort();
  }, []);
  const save = (write: () => Promise<void>) => async () => {
    setProblem(null);
    try {
      await write();
      if (menu.current) menu.current.open = false;
    } catch (error) {
      setProblem(`This could not be written: ${String(error)}`);
    }
  };
  return (
    <details className="save-menu" ref={menu}>
      <summary>Save as</summary>
      <div className="save-list">
        {onPicture && (
          <button type="button" onClick={save(() => savePng(basket, onPicture))}>
            Picture (PNG)
          </button>
        )}
        <button type="button" onClick={save(() => saveSvg(basket))}>
          Outlines (SVG)
        </button>
        <button type="button" onClick={save(() => saveGlb(basket))}>
          Model with strands (GLB)
        </button>
        <button type="button" onClick={save(() => saveStl(basket))}>
          Solid for a mould (STL)
        </button>
        {problem && <p role="alert">{problem}</p>}
      </div>
    </details>
  );
}
