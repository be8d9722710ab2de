import { useEffect, useMemo } from 'react';
import { BufferAttribute, Color, RingGeometry } from 'three';
import { woodGrain } from './woodGrain.ts';

interface Props {
  readonly colour: string;
  /** Radius of the basket's stand, cm. */
  readonly reach: number;
  /** Darkness of the shade under the basket, 0 … 1. */
  readonly shade: number;
}

/** A disc of table that fades into the background, seen from above only. */
export function Table({ colour, reach, shade }: Props) {
  const top = useMemo(() => fadingDisc(colour, (r) => 1 - smooth((r - 0.35) / 0.65)), [colour]);
  const under = useMemo(
    () => fadingDisc('#1d130a', (r) => shade * (1 - smooth(r)) ** 1.5),
    [shade],
  );
  const grain = useMemo(() => woodGrain(), []);
  useEffect(() => () => grain.dispose(), [grain]);
  useEffect(() => () => top.dispose(), [top]);
  useEffect(() => () => under.dispose(), [under]);
  return (
    <group rotation-x={-Math.PI / 2}>
      <mesh geometry={top} scale={6 * reach} position-z={-0.03} receiveShadow>
        <meshStandardMaterial
          map={grain}
          vertexColors
          transparent
          roughness={0.9}
          depthWrite={false}
        />
      </mesh>
      <mesh geometry={under} scale={1.5 * reach} position-z={-0.02}>
        <meshBasicMaterial vertexColors transparent depthWrite={false} />
      </mesh>
    </group>
  );
}

/** A disc of radius 1 in one colour, as opaque as `opacity` says at each distance 0 … 1. */
function fadingDisc(colour: string, opacity: (distance: number) => number): RingGeometry {
  const disc = new RingGeometry(0, 1, 64, 24);
  const { r, g, b } = new Color(colour);
  const place = disc.getAttribute('position');
  const colours = new Float32Array(4 * place.count);
  for (let at = 0; at < place.count; at += 1) {
    colours.set([r, g, b, opacity(Math.hypot(place.getX(at), place.getY(at)))], 4 * at);
  }
  disc.setAttribute('color', new BufferAttribute(colours, 4));
  return disc;
}

/** 0 below 0, 1 above 1, smooth between. */
function smooth(share: number): number {
  const t = Math.min(1, Math.max(0, share));
  return t * t * (3 - 2 * t);
}
