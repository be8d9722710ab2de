import { useLayoutEffect, useRef } from 'react';
import type { BasketMesh } from '../mesh/basketMesh.ts';
import type { TintKind } from '../mesh/rowTints.ts';
import { rowTints, tinted } from '../mesh/rowTints.ts';
import type { StrandMesh } from '../mesh/strandMesh.ts';
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

/** Strands as they were coloured last: they stay so while rows are only pointed at. */
interface Coloured {
  readonly shape: StageShape;
  readonly tint: TintKind;
  readonly mesh: StrandMesh;
}

function colouredPart({ mesh, basket }: StageShape, part: keyof BasketMesh, tint: TintKind) {
  return tinted(mesh[part], rowTints(basket.rows, tint));
}

/** The same of a basket that changes: its shapes go to the graphics card past React. */
export function LiveStrandSet({ shapes, part, picked, accent, tint = null }: LiveProps) {
  const { geometry, draw } = useStrandGeometry();
  const last = useRef<Coloured | null>(null);
  useLayoutEffect(() => {
    const drawNow = () => {
      const shape = shapes.get();
      if (!shape) return;
      if (!tint) {
        draw({ mesh: shape.mesh[part], picked, accent });
        return;
      }
      const isSame = last.current?.shape === shape && last.current.tint === tint;
      const coloured = isSame
        ? last.current
        : { shape, tint, mesh: colouredPart(shape, part, tint) };
      last.current = coloured;
      if (coloured) draw({ mesh: coloured.mesh, picked, accent });
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
