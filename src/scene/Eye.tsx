import { OrbitControls } from '@react-three/drei';
import { useFrame, useThree } from '@react-three/fiber';
import type { ComponentRef } from 'react';
import { useEffect, useRef } from 'react';
import { MathUtils, PerspectiveCamera, Spherical, Vector3 } from 'three';
import type { Extent, Inset, Lens } from './frameBasket.ts';
import { distance, isWellFramed, leastShareOf } from './frameBasket.ts';
import { useHeldPointers, whenHandsOff } from './handsOff.ts';
import type { StageView } from './stageView.ts';
import { stand } from './stageView.ts';
import { useInset } from './useInset.ts';

interface Props {
  /** How far what is looked at reaches now. */
  readonly extentNow: () => Extent;
  /** The basket's once it has come to rest; null before. */
  readonly settled?: Extent | null;
  /** Whether that is partly woven, and so grows and shrinks much: it is kept larger. */
  readonly isPart?: boolean;
  readonly view: StageView;
  /** Another number looks from `view` anew. */
  readonly nonce: number;
  /** What lies over the picture: the basket is shown between. */
  readonly inset?: Inset;
}

type Hands = ComponentRef<typeof OrbitControls>;

/** A way to go: from one place on a sphere round the basket to another. */
interface Journey {
  readonly began: number;
  /** How long it takes, ms. */
  readonly takes: number;
  readonly from: Spherical;
  readonly to: Spherical;
  readonly fromMiddle: Vector3;
  readonly toMiddle: Vector3;
}

/** Time taken to a view that was asked for, and after a basket that has outgrown the picture, ms. */
const paces = { asked: 380, following: 900 } as const;

const noInset: Inset = { top: 0, bottom: 0 };

/**
 * The eye: turned and brought nearer by hand; goes to a view when one is asked for, and otherwise
 * stays where it is while the basket changes. Once the basket is at rest it steps back or nearer if the
 * basket has outgrown the picture or become small in it, but not after it was moved by hand.
 */
export function Eye({
  extentNow,
  settled = null,
  isPart = false,
  view,
  nonce,
  inset = noInset,
}: Props) {
  const controls = useRef<Hands>(null);
  const journey = useRef<Journey | null>(null);
  /** The last way that was gone or is being gone. */
  const last = useRef<Journey | null>(null);
  /** A view was asked for while the basket was still on its way: it is looked at anew at rest. */
  const isDue = useRef(false);
  const latest = useRef({ extentNow, settled });
  latest.current = { extentNow, settled };
  const camera = useThree(({ camera }) => camera);
  const invalidate = useThree(({ invalidate }) => invalidate);
  const free = useInset(inset);
  useHeldPointers();

  const lens = ({ fov, aspect }: PerspectiveCamera): Lens => ({
    ...{ angle: (fov * Math.PI) / 180, aspect },
    free: free.current,
  });
  const look = (at: Extent, takes: number) => {
    const hands = controls.current;
    if (!hands || !(camera instanceof PerspectiveCamera)) return;
    const { turn, rise } = stand[view];
    const away = distance(at, turn, rise, lens(camera));
    const from = new Spherical().setFromVector3(camera.position.clone().sub(hands.target));
    const to = new Spherical(away, Math.PI / 2 - rise, turn);
    // the short way round
    from.theta =
      to.theta + Math.atan2(Math.sin(from.theta - to.theta), Math.cos(from.theta - to.theta));
    const isFirst = !last.current || journey.current?.began === Number.NEGATIVE_INFINITY;
    const isStill = isFirst || matchMedia('(prefers-reduced-motion: reduce)').matches;
    journey.current = {
      began: isStill ? Number.NEGATIVE_INFINITY : performance.now(),
      takes,
      from,
      to,
      fromMiddle: hands.target.clone(),
      toMiddle: new Vector3(...at.middle),
    };
    last.current = journey.current;
    invalidate();
  };
  /** `another` is true where what lies over the picture has changed, so that it is looked at anew. */
  const follow = (at: Extent, another = false) => {
    const hands = controls.current;
    if (!hands || !last.current || !(camera instanceof PerspectiveCamera)) return;
    // how near and far it may be goes with the basket
    hands.update();
    const place = endOf(last.current, hands);
    const away = place.distanceTo(last.current.toMiddle);
    const isMoved = camera.position.distanceTo(place) > 1e-3 * away;
    if (isMoved && !journey.current) return;
    const { turn, rise } = stand[view];
    const eye = { middle: last.current.toMiddle.toArray(), away, turn, rise };
    if (isDue.current || another) look(at, paces.asked);
    else if (!isWellFramed(at, eye, lens(camera), isPart ? leastShareOf.part : leastShareOf.basket))
      look(at, paces.following);
    isDue.current = false;
  };
  const acts = useRef({ look, follow });
  acts.current = { look, follow };

  // biome-ignore lint/correctness/useExhaustiveDependencies: another nonce asks for the view anew
  useEffect(() => {
    acts.current.look(latest.current.extentNow(), paces.asked);
    isDue.current = latest.current.settled === null;
  }, [view, nonce, camera]);

  // buttons over the picture come and wrap
  const { top, bottom } = inset;
  const lookedAt = useRef({ top, bottom });
  useEffect(() => {
    const before = lookedAt.current;
    lookedAt.current = { top, bottom };
    if (before.top === top && before.bottom === bottom) return;
    acts.current.follow(latest.current.extentNow(), true);
  }, [top, bottom]);

  useEffect(
    () => (settled ? whenHandsOff(() => acts.current.follow(settled)) : undefined),
    [settled],
  );

  useFrame(() => {
    const way = journey.current;
    const hands = controls.current;
    if (!way || !hands) return;
    const t = Math.min(1, (performance.now() - way.began) / way.takes);
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

  // of a basket on its way it stays as it was
  const reached = useRef(0);
  if (settled || reached.current === 0) {
    reached.current = Math.max(...(settled ?? extentNow()).half);
  }
  const reach = reached.current;
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

/** Where the eye is at the end of a way: no nearer and no further than hands may bring it. */
function endOf({ to, toMiddle }: Journey, { minDistance, maxDistance }: Hands): Vector3 {
  const { phi, theta } = to;
  const radius = MathUtils.clamp(to.radius, minDistance, maxDistance);
  return new Vector3().setFromSpherical(new Spherical(radius, phi, theta)).add(toMiddle);
}
