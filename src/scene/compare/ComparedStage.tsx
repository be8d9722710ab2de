import { OrbitControls } from '@react-three/drei';
import { memo } from 'react';
import { sceneWords } from '#words/scene.ts';
import type { BasketMesh } from '../../mesh/basketMesh.ts';
import type { Basket } from '../../model/basket.ts';
import { Eye } from '../Eye.tsx';
import type { Extent, Inset } from '../frameBasket.ts';
import { PointedWall } from '../PointedWall.tsx';
import type { TakePicture } from '../Snapshot.tsx';
import { Snapshot } from '../Snapshot.tsx';
import { StageCanvas } from '../StageCanvas.tsx';
import { StrandSet } from '../StrandSet.tsx';
import { stageColours } from '../stageColours.ts';
import type { StageTheme, StageView } from '../stageView.ts';
import { useInset } from '../useInset.ts';
import type { Gaze } from './gaze.ts';
import { LinkedGaze } from './LinkedGaze.tsx';
import { MarkLines, OutlineLines } from './SideLines.tsx';
import type { SideName } from './sideLook.ts';
import { sideLook } from './sideLook.ts';

/** A basket to show: which of the two, and its shape once there is one. */
export interface ShownSide {
  readonly side: SideName;
  readonly basket: Basket;
  readonly mesh: BasketMesh;
}

interface Props {
  /** The basket drawn as woven; null before it has settled. */
  readonly solid: ShownSide | null;
  /** The basket laid over it as an outline, where there is one. */
  readonly outlined: ShownSide | null;
  /** Of both baskets together when last looked at, so that both pictures have one scale. */
  readonly extent: Extent | null;
  /** Of both as they are now, once both are at rest; null before. */
  readonly settled: Extent | null;
  readonly reach: number;
  readonly gaze: Gaze;
  /** True for the picture whose eye goes to a view that is asked for; the other follows. */
  readonly leads: boolean;
  readonly row: number | null;
  readonly onRow: (row: number | null) => void;
  readonly view: StageView;
  readonly nonce: number;
  readonly theme: StageTheme;
  /** What lies over the picture: the basket is shown between. */
  readonly inset: Inset;
  readonly label: string;
  readonly onPicture: (take: TakePicture | null) => void;
}

/** One of the pictures of two compared baskets. Scene units: centimetres, y up. */
export const ComparedStage = memo(function ComparedStage(props: Props) {
  const { solid, outlined, extent, reach, gaze, leads, row, onRow, theme, inset } = props;
  const colours = stageColours[theme];
  const looks = sideLook[theme];
  return (
    <StageCanvas
      theme={theme}
      reach={reach}
      label={props.label}
      whenLost={sceneWords.lostOfTwo}
      onRow={onRow}
    >
      {solid && (
        <>
          <StrandSet mesh={solid.mesh.stakes} picked={null} accent={colours.accent} />
          <StrandSet mesh={solid.mesh.weavers} picked={row} accent={looks[solid.side].colour} />
          <StrandSet mesh={solid.mesh.fittings} picked={null} accent={colours.accent} />
          <MarkLines basket={solid.basket} look={looks[solid.side]} isUnder={outlined !== null} />
          <PointedWall basketNow={() => solid.basket} onRow={onRow} />
        </>
      )}
      {outlined && <OutlineLines basket={outlined.basket} look={looks[outlined.side]} />}
      {extent && leads && (
        <Eye
          extentNow={() => extent}
          settled={props.settled}
          view={props.view}
          nonce={props.nonce}
          inset={inset}
        />
      )}
      {extent && !leads && <FollowingEye extent={extent} inset={inset} />}
      <LinkedGaze gaze={gaze} />
      <Snapshot onReady={props.onPicture} />
    </StageCanvas>
  );
});

/** An eye that is turned by hand, and by that of the other picture. */
function FollowingEye({ extent, inset }: { readonly extent: Extent; readonly inset: Inset }) {
  useInset(inset);
  const reach = Math.max(...extent.half);
  return (
    <OrbitControls
      makeDefault
      enableDamping={false}
      minDistance={0.8 * reach}
      maxDistance={12 * reach}
    />
  );
}
