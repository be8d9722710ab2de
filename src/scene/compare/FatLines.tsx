import { useThree } from '@react-three/fiber';
import { useEffect, useLayoutEffect, useMemo } from 'react';
import { LineMaterial } from 'three/addons/lines/LineMaterial.js';
import { LineSegments2 } from 'three/addons/lines/LineSegments2.js';
import { LineSegmentsGeometry } from 'three/addons/lines/LineSegmentsGeometry.js';
import type { SideLook } from './sideLook.ts';

interface Props {
  /** Pairs of points, from `basketLines`. */
  readonly segments: Float32Array;
  readonly look: SideLook;
  /** Width of the line, px. */
  readonly width: number;
  readonly opacity: number;
  /** True for lines that are seen through what is in front of them. */
  readonly seenThrough: boolean;
  /** Lines of a higher order are drawn over those of a lower one. */
  readonly order: number;
}

/** Lines of a width in pixels, whole or dashed. */
export function FatLines({ segments, look, width, opacity, seenThrough, order }: Props) {
  const { size, invalidate } = useThree();
  const material = useMemo(() => new LineMaterial({ transparent: true }), []);
  const lines = useMemo(() => new LineSegments2(new LineSegmentsGeometry(), material), [material]);

  useEffect(
    () => () => {
      lines.geometry.dispose();
      material.dispose();
    },
    [lines, material],
  );

  useLayoutEffect(() => {
    const before = lines.geometry;
    lines.geometry = new LineSegmentsGeometry();
    lines.geometry.setPositions(segments);
    lines.computeLineDistances();
    lines.frustumCulled = false;
    before.dispose();
    invalidate();
  }, [lines, segments, invalidate]);

  useLayoutEffect(() => {
    material.color.set(look.colour);
    material.linewidth = width;
    material.opacity = opacity;
    material.depthTest = !seenThrough;
    material.depthWrite = false;
    material.dashed = look.dash !== null;
    if (look.dash) [material.dashSize, material.gapSize, material.dashOffset] = look.dash;
    material.resolution.set(size.width, size.height);
    material.needsUpdate = true;
    lines.renderOrder = order;
    invalidate();
  }, [material, lines, look, width, opacity, seenThrough, order, size, invalidate]);

  return <primitive object={lines} />;
}
