import { girthLineWords } from '#words/girthLine.ts';
import { CountField } from '../form/CountField.tsx';
import { LengthField } from '../form/LengthField.tsx';
import { limits } from '../plan/limits.ts';
import type { Unit } from '../plan/schema.ts';
import type { Handle } from './handles.ts';

export interface PointEditorProps {
  /** The chosen handle, or null. */
  readonly handle: Handle | null;
  readonly unit: Unit;
  readonly onMove: (handle: Handle, row: number, girth: number, stepped: boolean) => void;
}

const words = girthLineWords.editor;

/** The chosen point, or row set by hand, in numbers. */
export function PointEditor({ handle, unit, onMove }: PointEditorProps) {
  if (!handle) return <p className="girth-editor girth-editor-row">{words.none}</p>;
  const { kind, key, row, girth, lowest, highest } = handle;
  return (
    <div className="girth-editor">
      {kind === 'point' ? (
        <CountField
          key={`${key}-row`}
          label={words.row}
          count={row}
          least={lowest}
          most={highest}
          onCommit={(to, stepped) => {
            onMove(handle, to, girth, stepped);
            return null;
          }}
        />
      ) : (
        <p className="girth-editor-row">{words.rowByHand(row)}</p>
      )}
      <LengthField
        key={`${key}-girth`}
        label={words.girth}
        mm={girth}
        unit={unit}
        {...limits.girth}
        onCommit={(to, stepped) => {
          onMove(handle, row, to, stepped);
          return null;
        }}
      />
    </div>
  );
}
