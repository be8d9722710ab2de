import { OrbitControls } from '@react-three/drei';
import { Canvas } from '@react-three/fiber';
import { memo, useState } from 'react';
import { NoToneMapping } from 'three';
import type { BasketMesh } from '../../mesh/basketMesh.ts';
import type { Basket } from '../../model/basket.ts';
import { Eye } from '../Eye.tsx';
import type { Extent } from '../frameBasket.ts';
import { Lights } from '../Lights.tsx';
import { LostPicture } from '../LostPicture.tsx';
import { PointedWall } from '../PointedWall.tsx';
import { StrandSet } from '../StrandSet.tsx';
import { stageColours } from '../stageColours.ts';
import type { StageTheme, StageView } from '../stageView.ts';
import { Table } from '../Table.tsx';
import type { Gaze } from './gaze.ts';
import { LinkedGaze } from './LinkedGaze.tsx';
import { MarkLines, OutlineLines } from './SideLines.tsx';
import type { TakePicture } from './Snapshot.tsx';
import { Snapshot } from './Snapshot.tsx';
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
  readonly reach: number;
  readonly gaze: Gaze;
  /** True for the picture whose eye goes to a view that is asked for; the other follows. */
  readonly leads: boolean;
  readonly row: number | null;
  readonly onRow: (row: number | null) => void;
  readonly view: StageView;
  readonly nonce: number;
  readonly theme: StageTheme;
  readonly label: string;
  readonly onPicture: (take: TakePicture | null) => void;
}

/** One of the pictures of two compared baskets. Scene units: centimetres, y up. */
export const ComparedStage = memo(function ComparedStage(props: Props) {
  const { solid, outlined, extent, reach, gaze, leads, row, onRow, theme } = props;
  const [isLost, setLost] = useState(false);
  const colours = stageColours[theme];
  const looks = sideLook[theme];
  return (
    <div className="stage" role="img" aria-label={props.label}>
      <Canvas
        frameloop="demand"
        shadows="percentage"
        dpr={[1, 2]}
        camera={{ fov: 30, near: 1, far: 2000, position: [30, 25, 45] }}
        gl={{ antialias: true, toneMapping: NoToneMapping }}
        onPointerMissed={() => onRow(null)}
        onPointerLeave={() => onRow(null)}
      >
        <color attach="background" args={[colours.background]} />
        <Lights colours={colours} reach={reach} />
        <Table colour={colours.table} reach={reach} shade={colours.shade} />
        {solid && (
          <>
            <StrandSet mesh={solid.mesh.stakes} picked={null} accent={colours.accent} />
            <StrandSet mesh={solid.mesh.weavers} picked={row} accent={looks[solid.side].colour} />
            <MarkLines basket={solid.basket} look={looks[solid.side]} />
            <PointedWall basket={solid.basket} onRow={onRow} />
          </>
        )}
        {outlined && <OutlineLines basket={outlined.basket} look={looks[outlined.side]} />}
        {extent && leads && <Eye extent={extent} view={props.view} nonce={props.nonce} />}
        {extent && !leads && (
          <OrbitControls
            makeDefault
            enableDamping={false}
            minDistance={0.8 * Math.max(...extent.half)}
            maxDistance={12 * Math.max(...extent.half)}
          />
        )}
        <LinkedGaze gaze={gaze} />
        <Snapshot onReady={props.onPicture} />
        <LostPicture onLost={setLost} />
      </Canvas>
      {isLost && (
        <p className="stage-lost" role="status">
          The graphics card has let go of the picture. It comes back by itself; your plans are safe.
        </p>
      )}
    </div>
  );
});
