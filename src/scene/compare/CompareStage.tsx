import { useCallback, useRef, useState } from 'react';
import { sceneWords } from '#words/scene.ts';
import type { Inset } from '../frameBasket.ts';
import type { TakePicture } from '../Snapshot.tsx';
import type { StageTheme, StageView } from '../stageView.ts';
import { useReach } from '../useReach.ts';
import type { ShownSide } from './ComparedStage.tsx';
import { ComparedStage } from './ComparedStage.tsx';
import { newGaze } from './gaze.ts';
import type { SideName } from './sideLook.ts';
import { useFraming } from './useFraming.ts';
import '../stage.css';

interface Props {
  readonly a: ShownSide | null;
  readonly b: ShownSide | null;
  /** Whether both have come to rest: the eye then follows baskets that have outgrown the picture. */
  readonly areAtRest: boolean;
  /** Both next to each other, or the outline of one laid over the other. */
  readonly layout: 'beside' | 'over';
  /** Laid over: the one drawn as woven. */
  readonly solid: SideName;
  /** Row to mark on each. */
  readonly rows: Readonly<Record<SideName, number | null>>;
  readonly onRow: (side: SideName, row: number | null) => void;
  readonly view: StageView;
  /** Another number looks from `view` anew. */
  readonly nonce: number;
  /** How many plans have been opened: the eye looks anew once the basket of one is there. */
  readonly opened: number;
  readonly theme: StageTheme;
  /** What lies over both pictures. */
  readonly inset: Inset;
  /** What a person who cannot see a picture is told. */
  readonly labels: Readonly<Record<SideName, string>>;
  /** Told how to take the pictures shown, left to right; an empty list while there are none. */
  readonly onPictures: (take: readonly TakePicture[]) => void;
}

/** Two baskets at one scale, turned by one hand. */
export function CompareStage(props: Props) {
  const { a, b, layout, solid, rows, onRow, view, theme, inset, labels, onPictures } = props;
  const [gaze] = useState(newGaze);
  const framing = useFraming(a ?? undefined, b ?? undefined, props.nonce, props.opened);
  const reach = useReach(framing.now);
  const taken = useRef<Partial<Record<SideName, TakePicture>>>({});
  const ready = useCallback(
    (side: SideName, take: TakePicture | null) => {
      if (take) taken.current[side] = take;
      else delete taken.current[side];
      const { a: one, b: other } = taken.current;
      onPictures([one, other].filter((picture) => picture !== undefined));
    },
    [onPictures],
  );
  const readyA = useCallback((take: TakePicture | null) => ready('a', take), [ready]);
  const readyB = useCallback((take: TakePicture | null) => ready('b', take), [ready]);

  const onRowA = useCallback((row: number | null) => onRow('a', row), [onRow]);
  const onRowB = useCallback((row: number | null) => onRow('b', row), [onRow]);
  const { looked, nonce } = framing;
  const settled = props.areAtRest ? framing.now : null;
  const shared = { extent: looked, settled, reach, gaze, view, nonce, theme, inset };
  if (layout === 'over') {
    const [under, over] = solid === 'a' ? [a, b] : [b, a];
    return (
      <ComparedStage
        {...shared}
        key="over"
        solid={under}
        outlined={over}
        leads
        row={rows[solid]}
        onRow={solid === 'a' ? onRowA : onRowB}
        label={sceneWords.laidOver(labels.a, labels.b)}
        onPicture={readyA}
      />
    );
  }
  return (
    <div className="compare-pair">
      <ComparedStage
        {...shared}
        key="a"
        solid={a}
        outlined={null}
        leads
        row={rows.a}
        onRow={onRowA}
        label={labels.a}
        onPicture={readyA}
      />
      <ComparedStage
        {...shared}
        key="b"
        solid={b}
        outlined={null}
        leads={false}
        row={rows.b}
        onRow={onRowB}
        label={labels.b}
        onPicture={readyB}
      />
    </div>
  );
}
