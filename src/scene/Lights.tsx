import { useThree } from '@react-three/fiber';
import { memo, useLayoutEffect, useRef } from 'react';
import type { DirectionalLight } from 'three';
import type { StageColours } from './stageColours.ts';

interface Props {
  readonly colours: StageColours;
  /** How far the basket reaches from the middle of the table, cm. */
  readonly reach: number;
}

/** Daylight from all round, a lamp at the upper left with a soft shadow, and a little from below. */
export const Lights = memo(function Lights({ colours, reach }: Props) {
  const key = useRef<DirectionalLight>(null);
  const { gl, invalidate } = useThree();

  useLayoutEffect(() => {
    const light = key.current;
    if (!light) return;
    const { camera, mapSize } = light.shadow;
    camera.left = camera.bottom = -1.7 * reach;
    camera.right = camera.top = 1.7 * reach;
    camera.near = 0.5 * reach;
    camera.far = 6 * reach;
    camera.updateProjectionMatrix();
    light.shadow.normalBias = (2.4 * reach) / mapSize.width;
    // turning the eye leaves the shadow as it is: it is drawn anew only when the basket changes
    gl.shadowMap.autoUpdate = false;
    gl.shadowMap.needsUpdate = true;
    invalidate();
  }, [reach, gl, invalidate]);

  return (
    <>
      <hemisphereLight args={[colours.sky, colours.ground, colours.ambient]} />
      <directionalLight
        ref={key}
        castShadow
        color={colours.sky}
        intensity={colours.key}
        position={[-1.6 * reach, 2.4 * reach, 1.5 * reach]}
        shadow-mapSize={[1024, 1024]}
        shadow-radius={5}
        shadow-bias={-0.0004}
      />
      <directionalLight
        color={colours.sky}
        intensity={colours.fill}
        position={[2 * reach, 0.6 * reach, 1.2 * reach]}
      />
      <directionalLight
        color={colours.sky}
        intensity={2 * colours.fill}
        position={[-0.6 * reach, -2 * reach, 1.2 * reach]}
      />
    </>
  );
});
