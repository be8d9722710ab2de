import { Canvas } from '@react-three/fiber';
import { useMemo, useState } from 'react';
import { NoToneMapping } from 'three';
import type { BasketMesh } from '../mesh/basketMesh.ts';
import type { Basket } from '../model/basket.ts';
import { Eye } from './Eye.tsx';
import { extent } from './frameBasket.ts';
import { Lights } from './Lights.tsx';
import { LostPicture } from './LostPicture.tsx';
import { PointedWall } from './PointedWall.tsx';
import { StrandSet } from './StrandSet.tsx';
import { stageColours } from './stageColours.ts';
import type { StageTheme, StageView } from './stageView.ts';
import { Table } from './Table.tsx';
import { useReach } from './useReach.ts';
import './stage.css';

interface Props {
  /** The settled basket; null before the first. */
  readonly basket: Basket | null;
  readonly mesh: BasketMesh | null;
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
}

/** The settled basket on a table, to be turned by hand. Scene units: centimetres, y up. */
export function Stage(props: Props) {
  const { basket, mesh, row, onRow, view, onView, theme, viewNonce = 0 } = props;
  const [isLost, setLost] = useState(false);
  const [homeComings, setHomeComings] = useState(0);
  const colours = stageColours[theme];
  const size = useMemo(() => (basket ? extent(basket) : null), [basket]);
  const reach = useReach(size);
  return (
    <div
      className="stage"
      role="img"
      aria-label={props.label ?? described(basket)}
      onDoubleClick={() => {
        setHomeComings(homeComings + 1);
        onView('quarter');
      }}
    >
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
        {basket && mesh && size && (
          <>
            <StrandSet mesh={mesh.stakes} picked={null} accent={colours.accent} />
            <StrandSet mesh={mesh.weavers} picked={row} accent={colours.accent} />
            <PointedWall basket={basket} onRow={onRow} />
            <Eye extent={size} view={view} nonce={viewNonce + homeComings} />
          </>
        )}
        <LostPicture onLost={setLost} />
      </Canvas>
      {isLost && (
        <p className="stage-lost" role="status">
          The graphics card has let go of the picture. It comes back by itself; your plan is safe.
        </p>
      )}
    </div>
  );
}

/** The basket in words, for those who do not see it. */
function described(basket: Basket | null): string {
  if (!basket) return 'The basket is being settled';
  const { rim, height, ends, rows } = basket.summary;
  const [length, width, high] = [rim.length, rim.width, height].map((mm) => (mm / 10).toFixed(1));
  return `Woven basket, ${length} by ${width} cm at the rim and ${high} cm high, ${ends} ends and ${rows} rows`;
}
