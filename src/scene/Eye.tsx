import { OrbitControls } from '@react-three/drei';
import { useFrame, useThree } from '@react-three/fiber';
import type { ComponentRef } from 'react';
import { useEffect, useRef } from 'react';
import { PerspectiveCamera, Spherical, Vector3 } from 'three';
import type { Extent, Inset } from './frameBasket.ts';
import { distance } from './frameBasket.ts';
import type { StageView } from './stageView.ts';
import { stand } from './stageView.ts';
import { useInset } from './useInset.ts';

interface Props {
  readonly extent: Extent;
  readonly view: StageView;
  /** Another number looks from `view` anew. */
  readonly nonce: number;
  /** What lies over the picture: the basket is shown between. */
  readonly inset?: Inset;
}

/** A way to go: from one place on a sphere round the basket to another. */
interface Journey {
  readonly began: number;
  readonly from: Spherical;
  readonly to: Spherical;
  readonly fromMiddle: Vector3;
  readonly toMiddle: Vector3;
}

const milliseconds = 380;

const noInset: Inset = { top: 0, bottom: 0 };

/**
 * The eye: turned and brought nearer by hand; goes to a view when one is asked for, and otherwise
 * stays where it is, whatever becomes of the basket.
 */
export function Eye({ extent, view, nonce, inset = noInset }: Props) {
  const controls = useRef<ComponentRef<typeof OrbitControls>>(null);
  const journey = useRef<Journey | null>(null);
  const hasLooked = useRef(false);
  const latest = useRef(extent);
  latest.current = extent;
  const { camera, invalidate } = useThree();
  const free = useInset(inset);

  // biome-ignore lint/correctness/useExhaustiveDependencies: another nonce asks for the view anew
  useEffect(() => {
    const hands = controls.current;
    if (!hands || !(camera instanceof PerspectiveCamera)) return;
    const { turn, rise } = stand[view];
    const lens = { angle: (camera.fov * Math.PI) / 180, aspect: camera.aspect, free: free.current };
    const away = distance(latest.current, turn, rise, lens);
    const from = new Spherical().setFromVector3(camera.position.clone().sub(hands.target));
    const to = new Spherical(away, Math.PI / 2 - rise, turn);
    // the short way round
    from.theta =
      to.theta + Math.atan2(Math.sin(from.theta - to.theta), Math.cos(from.theta - to.theta));
    const isStill = !hasLooked.current || matchMedia('(prefers-reduced-motion: reduce)').matches;
    hasLooked.current = true;
    journey.current = {
      began: isStill ? Number.NEGATIVE_INFINITY : performance.now(),
      from,
      to,
      fromMiddle: hands.target.clone(),
      toMiddle: new Vector3(...latest.current.middle),
    };
    invalidate();
  }, [view, nonce, camera, free, invalidate]);

  useFrame(() => {
    const way = journey.current;
    const hands = controls.current;
    if (!way || !hands) return;
    const t = Math.min(1, (performance.now() - way.began) / milliseconds);
    const share = t * t * (3 - 2 * t);
    const mix = (a: number, b: number) => a + share * (b - a);
    const place = new Spherical(
      mix(way.from.radius, way.to.radius),
      mix(way.from.phi, way.to.phi),
      mix(way.from.theta, way.to.theta),
    );
    hands.target.lerpVectors(way.fromMiddle, way.toMiddle, share);
    camera.position.setFromSpherical(place).add(hands.target);
    hands.update();
    if (t >= 1) journey.current = null;
    else invalidate();
  });

  const reach = Math.max(...extent.half);
  return (
    <OrbitControls
      ref={controls}
      makeDefault
      enableDamping={false}
      minDistance={0.8 * reach}
      maxDistance={12 * reach}
      onStart={() => {
        journey.current = null;
      }}
    />
  );
}
