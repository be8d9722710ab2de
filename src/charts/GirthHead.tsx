import { girthLineWords } from '#words/girthLine.ts';
import { WordHelp } from '../form/WordHelp.tsx';
import type { Handle } from './handles.ts';

export interface GirthHeadProps {
  /** The chosen handle, or null. */
  readonly handle: Handle | null;
  /** False for the only point of the line: it stays. */
  readonly canRemove: boolean;
  readonly onAdd: () => void;
  readonly onRemove: (handle: Handle) => void;
}

/** The chart's title, and buttons for a point more and a point less. */
export function GirthHead({ handle, canRemove, onAdd, onRemove }: GirthHeadProps) {
  return (
    <figcaption className="girth-head">
      <span className="girth-title">
        {girthLineWords.title} <WordHelp word="girth" />
      </span>
      <button type="button" className="girth-button" onClick={onAdd}>
        {girthLineWords.addPoint}
      </button>
      <button
        type="button"
        className="girth-button"
        disabled={!handle || !canRemove}
        onClick={() => handle && onRemove(handle)}
      >
        {handle?.kind === 'hand' ? girthLineWords.clearRow : girthLineWords.removePoint}
      </button>
    </figcaption>
  );
}
