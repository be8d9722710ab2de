import { useThree } from '@react-three/fiber';
import { useEffect, useLayoutEffect, useMemo, useRef } from 'react';
import { BufferGeometry, Color } from 'three';
import type { StrandMesh } from '../mesh/strandMesh.ts';
import { fillColour, fillGeometry, sameBytes, upright } from './toThree.ts';

interface Props {
  readonly mesh: StrandMesh;
  /** Strand number drawn in the accent colour; null for none. */
  readonly picked: number | null;
  readonly accent: string;
}

interface Coloured {
  readonly colour: Uint8Array;
  readonly picked: number | null;
  readonly accent: string;
}

/** All stakes, or all weavers, as one thing to draw. */
export function StrandSet({ mesh, picked, accent }: Props) {
  const geometry = useMemo(() => new BufferGeometry(), []);
  const { gl, invalidate } = useThree();
  const coloured = useRef<Coloured | null>(null);
  useEffect(() => () => geometry.dispose(), [geometry]);

  useLayoutEffect(() => {
    fillGeometry(geometry, mesh);
    gl.shadowMap.needsUpdate = true;
    invalidate();
  }, [geometry, mesh, gl, invalidate]);

  useLayoutEffect(() => {
    // in a drag the colours stay as they are
    const last = coloured.current;
    coloured.current = { colour: mesh.colour, picked, accent };
    if (last?.picked === picked && last.accent === accent) {
      if (sameBytes(last.colour, mesh.colour)) return;
    }
    const { r, g, b } = new Color(accent);
    fillColour(geometry, { strand: mesh.strand, colour: mesh.colour, picked, accent: [r, g, b] });
    invalidate();
  }, [geometry, mesh, picked, accent, invalidate]);

  return (
    <mesh {...upright} geometry={geometry} frustumCulled={false} castShadow receiveShadow>
      <meshLambertMaterial vertexColors />
    </mesh>
  );
}
