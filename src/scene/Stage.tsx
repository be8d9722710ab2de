import { lazy, Suspense, useLayoutEffect, useMemo, useState } from 'react';
import { sceneWords } from '#words/scene.ts';
import type { BasketMesh } from '../mesh/basketMesh.ts';
import type { RowTints } from '../mesh/rowTints.ts';
import { tinted } from '../mesh/rowTints.ts';
import type { Basket } from '../model/basket.ts';
import { Eye } from './Eye.tsx';
import type { Extent, Inset } from './frameBasket.ts';
import { extent } from './frameBasket.ts';
import type { Live } from './live.ts';
import { live, useLive } from './live.ts';
import { PointedWall } from './PointedWall.tsx';
import type { ReadingWords } from './Readings.tsx';
import type { TakePicture } from './Snapshot.tsx';
import { Snapshot } from './Snapshot.tsx';
import { StageCanvas } from './StageCanvas.tsx';
import { StrandSet } from './StrandSet.tsx';
import { stageColours } from './stageColours.ts';
import type { StageTheme, StageView } from './stageView.ts';
import { useReach } from './useReach.ts';
import './stage.css';

const Readings = lazy(async () => ({ default: (await import('./Readings.tsx')).Readings }));

interface Props {
  /** The settled basket; null before the first. */
  readonly basket: Basket | null;
  readonly mesh: BasketMesh | null;
  /** Whether the basket has come to rest: the eye then follows one that has outgrown the picture. */
  readonly isAtRest?: boolean;
  /** Row drawn in the accent colour. */
  readonly row: number | null;
  readonly onRow: (row: number | null) => void;
  readonly view: StageView;
  /** Told 'quarter' when the stage is double-clicked. */
  readonly onView: (view: StageView) => void;
  readonly theme: StageTheme;
  /** Another number looks from `view` anew, after the eye was moved by hand or a plan was opened. */
  readonly viewNonce?: number;
  /** What a person who cannot see the picture is told; by default the size in cm. */
  readonly label?: string;
  /** Dimensions beside the basket; left out, there are none. */
  readonly readings?: ReadingWords | null;
  /** Colours of the rows in place of the strands' own. */
  readonly tints?: RowTints | null;
  /** What lies over the picture: the basket is shown between. */
  readonly inset?: Inset;
  /** Is given the way to take a picture of the stage. */
  readonly onPicture?: (take: TakePicture | null) => void;
}

/** The settled basket on a table, to be turned by hand. Scene units: centimetres, y up. */
export function Stage(props: Props) {
  const { basket, mesh, onRow, onView, theme, viewNonce = 0 } = props;
  const [homeComings, setHomeComings] = useState(0);
  const size = useMemo(
    () =>
      basket ? extent(basket, mesh ? [mesh.fittings.positions, mesh.stakes.positions] : []) : null,
    [basket, mesh],
  );
  const reach = useReach(size);
  const shown = { ...props, size, nonce: viewNonce + homeComings };
  // handed on past the canvas, which need not be drawn anew for another shape
  const [handed] = useState(() => live<SceneProps>(shown));
  useLayoutEffect(() => handed.set(shown));
  const contents = useMemo(() => <Scene handed={handed} />, [handed]);
  return (
    <StageCanvas
      theme={theme}
      reach={reach}
      label={props.label ?? described(basket)}
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
  readonly size: Extent | null;
  readonly nonce: number;
}

/** What stands on the table. */
function Scene({ handed }: { readonly handed: Live<SceneProps> }) {
  const { basket, mesh, isAtRest, row, onRow, view, theme, size, nonce, inset, ...rest } =
    useLive(handed);
  const { readings = null, tints = null, onPicture } = rest;
  const colours = stageColours[theme];
  const weavers = useMemo(
    () => (mesh && tints ? tinted(mesh.weavers, tints) : mesh?.weavers),
    [mesh, tints],
  );
  return (
    <>
      {basket && mesh && weavers && size && (
        <>
          <StrandSet mesh={mesh.stakes} picked={null} accent={colours.accent} />
          <StrandSet mesh={weavers} picked={row} accent={colours.accent} />
          <StrandSet mesh={mesh.fittings} picked={null} accent={colours.accent} />
          {readings && (
            <Suspense fallback={null}>
              <Readings
                basket={basket}
                row={row}
                words={readings}
                ink={colours.ink}
                accent={colours.accent}
              />
            </Suspense>
          )}
          <PointedWall basket={basket} onRow={onRow} />
          <Eye
            extent={size}
            settled={isAtRest ? size : null}
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

/** The basket in words, for those who do not see it. */
function described(basket: Basket | null): string {
  if (!basket) return sceneWords.settling;
  const { rim, height, ends, rows } = basket.summary;
  const cm = (mm: number) => (mm / 10).toFixed(1);
  return sceneWords.basket(cm(rim.length), cm(rim.width), cm(height), ends, rows);
}
