import { lazy, Suspense, useLayoutEffect, useMemo, useState } from 'react';
import { sceneWords } from '#words/scene.ts';
import type { TintKind } from '../mesh/rowTints.ts';
import type { Basket } from '../model/basket.ts';
import { Eye } from './Eye.tsx';
import type { Extent, Inset } from './frameBasket.ts';
import type { Live } from './live.ts';
import { live, useLive, usePicked } from './live.ts';
import { PointedWall } from './PointedWall.tsx';
import type { ReadingWords } from './Readings.tsx';
import type { TakePicture } from './Snapshot.tsx';
import { Snapshot } from './Snapshot.tsx';
import { StageCanvas } from './StageCanvas.tsx';
import { LiveStrandSet } from './StrandSet.tsx';
import { stageColours } from './stageColours.ts';
import type { StageShape } from './stageShape.ts';
import { extentOf } from './stageShape.ts';
import type { StageTheme, StageView } from './stageView.ts';
import { useLiveReach } from './useReach.ts';
import './stage.css';

const Readings = lazy(async () => ({ default: (await import('./Readings.tsx')).LiveReadings }));

interface Props {
  /** The basket, null before the first: drawn as it changes, while nothing else here is drawn anew. */
  readonly shapes: Live<StageShape | null>;
  /** Row drawn in the accent colour. */
  readonly row: number | null;
  readonly onRow: (row: number | null) => void;
  readonly view: StageView;
  /** Told 'quarter' when the stage is double-clicked. */
  readonly onView: (view: StageView) => void;
  readonly theme: StageTheme;
  /** Another number looks from `view` anew, after the eye was moved by hand or a plan was opened. */
  readonly viewNonce?: number;
  /** What a person who cannot see the picture is told. */
  readonly label: string;
  /** Words for the dimensions beside the basket; left out, there are none. */
  readonly readings?: ((basket: Basket, row: number | null) => ReadingWords) | null;
  /** What the rows are coloured by in place of the strands' own colours. */
  readonly tint?: TintKind | null;
  /** What lies over the picture: the basket is shown between. */
  readonly inset?: Inset;
  /** Is given the way to take a picture of the stage. */
  readonly onPicture?: (take: TakePicture | null) => void;
}

/** The settled basket on a table, to be turned by hand. Scene units: centimetres, y up. */
export function Stage(props: Props) {
  const { shapes, onRow, onView, theme, viewNonce = 0 } = props;
  const [homeComings, setHomeComings] = useState(0);
  const reach = useLiveReach(shapes);
  const shown = { ...props, nonce: viewNonce + homeComings };
  // handed on past the canvas, which need not be drawn anew
  const [handed] = useState(() => live<SceneProps>(shown));
  useLayoutEffect(() => handed.set(shown));
  const contents = useMemo(() => <Scene handed={handed} />, [handed]);
  return (
    <StageCanvas
      theme={theme}
      reach={reach}
      label={props.label}
      whenLost={sceneWords.lost}
      onRow={onRow}
      onDoubleClick={() => {
        setHomeComings(homeComings + 1);
        onView('quarter');
      }}
    >
      {contents}
    </StageCanvas>
  );
}

interface SceneProps extends Props {
  readonly nonce: number;
}

/** What stands on the table. */
function Scene({ handed }: { readonly handed: Live<SceneProps> }) {
  const { shapes, row, onRow, theme, readings = null, tint = null, ...rest } = useLive(handed);
  const { view, nonce, inset, onPicture } = rest;
  const hasBasket = usePicked(shapes, (shape) => shape !== null);
  const atRest = usePicked(shapes, (shape) => (shape?.isAtRest ? shape : null));
  const settled = useMemo(() => atRest && extentOf(atRest), [atRest]);
  const colours = stageColours[theme];
  const look = { shapes, accent: colours.accent };
  return (
    <>
      {hasBasket && (
        <>
          <LiveStrandSet {...look} part="stakes" picked={null} />
          <LiveStrandSet {...look} part="weavers" picked={row} tint={tint} />
          <LiveStrandSet {...look} part="fittings" picked={null} />
          {readings && (
            <Suspense fallback={null}>
              <Readings
                shapes={shapes}
                row={row}
                wordsOf={readings}
                ink={colours.ink}
                accent={colours.accent}
              />
            </Suspense>
          )}
          <PointedWall basketNow={() => shapes.get()?.basket ?? null} onRow={onRow} />
          <Eye
            extentNow={() => extentNow(shapes)}
            settled={settled}
            isPart={atRest?.isPart === true}
            view={view}
            nonce={nonce}
            {...(inset && { inset })}
          />
        </>
      )}
      {onPicture && <Snapshot onReady={onPicture} />}
    </>
  );
}

function extentNow(shapes: Live<StageShape | null>): Extent {
  const shape = shapes.get();
  if (!shape) throw new Error('there is no basket to look at');
  return extentOf(shape);
}
