import { useThree } from '@react-three/fiber';
import { useCallback, useEffect, useMemo, useRef } from 'react';
import { BufferGeometry, Color } from 'three';
import type { StrandMesh } from '../mesh/strandMesh.ts';
import { fillColour, fillGeometry, sameBytes } from './toThree.ts';

/** Strands, and how they are drawn. */
export interface DrawnStrands {
  readonly mesh: StrandMesh;
  /** Strand number drawn in the accent colour; null for none. */
  readonly picked: number | null;
  readonly accent: string;
}

/** A geometry, and the way to put other strands into it: only what differs is sent to the graphics card. */
export function useStrandGeometry(): {
  readonly geometry: BufferGeometry;
  readonly draw: (strands: DrawnStrands) => void;
} {
  const geometry = useMemo(() => new BufferGeometry(), []);
  const gl = useThree(({ gl }) => gl);
  const invalidate = useThree(({ invalidate }) => invalidate);
  const last = useRef<DrawnStrands | null>(null);
  useEffect(() => () => geometry.dispose(), [geometry]);
  const draw = useCallback(
    (strands: DrawnStrands) => {
      const { mesh, picked, accent } = strands;
      const before = last.current;
      last.current = strands;
      const isAnother = before?.mesh !== mesh;
      if (isAnother) {
        fillGeometry(geometry, mesh);
        gl.shadowMap.needsUpdate = true;
      }
      // in a drag the colours stay as they are
      const isSameLook = before?.picked === picked && before.accent === accent;
      if (!isSameLook || !sameBytes(before.mesh.colour, mesh.colour)) {
        const { r, g, b } = new Color(accent);
        fillColour(geometry, {
          strand: mesh.strand,
          colour: mesh.colour,
          picked,
          accent: [r, g, b],
        });
      } else if (!isAnother) return;
      invalidate();
    },
    [geometry, gl, invalidate],
  );
  return { geometry, draw };
}
