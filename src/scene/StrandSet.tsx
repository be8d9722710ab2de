import { useLayoutEffect } from 'react';
import type { BasketMesh } from '../mesh/basketMesh.ts';
import type { TintKind } from '../mesh/rowTints.ts';
import { rowTints, tinted } from '../mesh/rowTints.ts';
import type { Live } from './live.ts';
import type { StageShape } from './stageShape.ts';
import { upright } from './toThree.ts';
import type { DrawnStrands } from './useStrandGeometry.ts';
import { useStrandGeometry } from './useStrandGeometry.ts';

/** All stakes, or all weavers, as one thing to draw. */
export function StrandSet({ mesh, picked, accent }: DrawnStrands) {
  const { geometry, draw } = useStrandGeometry();
  useLayoutEffect(() => draw({ mesh, picked, accent }), [draw, mesh, picked, accent]);
  return <Strands geometry={geometry} />;
}

interface LiveProps extends Omit<DrawnStrands, 'mesh'> {
  readonly shapes: Live<StageShape | null>;
  readonly part: keyof BasketMesh;
  /** What the rows are coloured by in place of the strands' own colours. */
  readonly tint?: TintKind | null;
}

/** The same of a basket that changes: its shapes go to the graphics card past React. */
export function LiveStrandSet({ shapes, part, picked, accent, tint = null }: LiveProps) {
  const { geometry, draw } = useStrandGeometry();
  useLayoutEffect(() => {
    const drawNow = () => {
      const shape = shapes.get();
      if (!shape) return;
      const own = shape.mesh[part];
      const mesh = tint ? tinted(own, rowTints(shape.basket.rows, tint)) : own;
      draw({ mesh, picked, accent });
    };
    drawNow();
    return shapes.subscribe(drawNow);
  }, [shapes, part, picked, accent, tint, draw]);
  return <Strands geometry={geometry} />;
}

function Strands({ geometry }: Pick<ReturnType<typeof useStrandGeometry>, 'geometry'>) {
  return (
    <mesh {...upright} geometry={geometry} frustumCulled={false} castShadow receiveShadow>
      <meshLambertMaterial vertexColors />
    </mesh>
  );
}
