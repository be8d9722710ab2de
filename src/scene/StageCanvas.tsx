import { Canvas, extend } from '@react-three/fiber';
import type { ReactNode } from 'react';
import { useMemo, useState } from 'react';
import {
  Color,
  DirectionalLight,
  Group,
  HemisphereLight,
  Mesh,
  MeshBasicMaterial,
  MeshLambertMaterial,
  NoToneMapping,
} from 'three';
import { Lights } from './Lights.tsx';
import { LostPicture } from './LostPicture.tsx';
import { stageColours } from './stageColours.ts';
import type { StageTheme } from './stageView.ts';
import { Table } from './Table.tsx';

// All that scenes are made of; what is not named here is not in the built app (.config/threeParts.mjs).
extend({
  Color,
  DirectionalLight,
  Group,
  HemisphereLight,
  Mesh,
  MeshBasicMaterial,
  MeshLambertMaterial,
});

interface Props {
  readonly theme: StageTheme;
  readonly reach: number;
  /** What a person who cannot see the picture is told. */
  readonly label: string;
  /** What is said while the graphics card has let go of the picture. */
  readonly whenLost: string;
  readonly onRow: (row: number | null) => void;
  readonly onDoubleClick?: () => void;
  /** What stands on the table. The same element again leaves the canvas as it is. */
  readonly children: ReactNode;
}

/** A lit table to stand baskets on, and what is said when the picture is lost. Scene units: cm, y up. */
export function StageCanvas({
  theme,
  reach,
  label,
  whenLost,
  onRow,
  onDoubleClick,
  children,
}: Props) {
  const [isLost, setLost] = useState(false);
  const canvas = useMemo(() => {
    const colours = stageColours[theme];
    return (
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
        {children}
        <LostPicture onLost={setLost} />
      </Canvas>
    );
  }, [theme, reach, onRow, children]);
  return (
    <div className="stage" role="img" aria-label={label} onDoubleClick={onDoubleClick}>
      {canvas}
      {isLost && (
        <p className="stage-lost" role="status">
          {whenLost}
        </p>
      )}
    </div>
  );
}
