import { useThree } from '@react-three/fiber';
import { useEffect, useLayoutEffect, useMemo } from 'react';
import { BufferGeometry, Color } from 'three';
import type { StrandMesh } from '../mesh/strandMesh.ts';
import { fillColour, fillGeometry } from './toThree.ts';

interface Props {
  readonly mesh: StrandMesh;
  /** Strand number drawn in the accent colour; null for none. */
  readonly picked: number | null;
  readonly accent: string;
}

/** All stakes, or all weavers, as one thing to draw. */
export function StrandSet({ mesh, picked, accent }: Props) {
  const geometry = useMemo(() => new BufferGeometry(), []);
  const { gl, invalidate } = useThree();
  useEffect(() => () => geometry.dispose(), [geometry]);

  useLayoutEffect(() => {
    fillGeometry(geometry, mesh);
    gl.shadowMap.needsUpdate = true;
    invalidate();
  }, [geometry, mesh, gl, invalidate]);

  useLayoutEffect(() => {
    const { r, g, b } = new Color(accent);
    fillColour(geometry, { strand: mesh.strand, colour: mesh.colour, picked, accent: [r, g, b] });
    invalidate();
  }, [geometry, mesh, picked, accent, invalidate]);

  return (
    <mesh geometry={geometry} frustumCulled={false} castShadow receiveShadow>
      <meshLambertMaterial vertexColors />
    </mesh>
  );
}
