import { useCallback, useRef, useState } from 'react';
import { stageWords } from '#words/stage.ts';
import type { Basket } from '../../model/basket.ts';
import type { TakePicture } from '../../scene/Snapshot.tsx';
import { useShutMenu } from '../useShutMenu.ts';
import { saveGlb, savePng, saveStl, saveSvg } from './saveShape.ts';
import type { TintScale } from './tintScale.ts';

interface Props {
  readonly basket: Basket;
  /** Takes a picture of the stage; null where there is none. */
  readonly onPicture: TakePicture | null;
  /** What the colours in the picture stand for; null for the strands' own. */
  readonly scale: TintScale | null;
}

const words = stageWords.save;

/** The basket as files: picture, drawing, model, solid. */
export function SaveMenu({ basket, onPicture, scale }: Props) {
  const menu = useRef<HTMLDetailsElement>(null);
  const [problem, setProblem] = useState<string | null>(null);
  const [isOpen, setOpen] = useState(false);
  const shut = useCallback((byKey: boolean) => {
    const { current: own } = menu;
    if (own) own.open = false;
    if (byKey) own?.querySelector('summary')?.focus();
  }, []);
  useShutMenu(menu, isOpen, shut);
  const save = (write: () => Promise<void>) => async () => {
    setProblem(null);
    try {
      await write();
      shut(false);
    } catch (error) {
      setProblem(words.failed(String(error)));
    }
  };
  return (
    <details
      className="save-menu"
      ref={menu}
      onToggle={({ currentTarget }) => setOpen(currentTarget.open)}
    >
      <summary>{words.menu}</summary>
      <div className="save-list">
        {onPicture && (
          <button type="button" onClick={save(() => savePng(basket, onPicture, scale))}>
            {words.png}
          </button>
        )}
        <button type="button" onClick={save(() => saveSvg(basket))}>
          {words.svg}
        </button>
        <button type="button" onClick={save(() => saveGlb(basket))}>
          {words.glb}
        </button>
        <button type="button" onClick={save(() => saveStl(basket))}>
          {words.stl}
        </button>
        {problem && <p role="alert">{problem}</p>}
      </div>
    </details>
  );
}
