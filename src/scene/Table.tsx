import { memo, useEffect, useMemo } from 'react';
import { BufferAttribute, Color, RingGeometry } from 'three';
import { woodGrain } from './woodGrain.ts';

interface Props {
  readonly colour: string;
  /** How far the basket reaches from the middle of the table, cm. */
  readonly reach: number;
  /** Darkness of the shade under the basket, 0 … 1. */
  readonly shade: number;
}

/** Radius of the table, and of the shade under the basket, over the basket's reach. */
const tableSize = 6;
const shadeSize = 1.5;

/** A disc of table that fades into the background, seen from above only. */
export const Table = memo(function Table({ colour, reach, shade }: Props) {
  const top = useMemo(() => tableTop(colour, shade), [colour, shade]);
  const grain = useMemo(() => woodGrain(), []);
  useEffect(() => () => top.dispose(), [top]);
  useEffect(() => () => grain.dispose(), [grain]);
  return (
    <mesh
      geometry={top}
      rotation-x={-Math.PI / 2}
      position-y={-0.03}
      scale={tableSize * reach}
      receiveShadow
    >
      <meshLambertMaterial map={grain} vertexColors transparent depthWrite={false} />
    </mesh>
  );
});

/** A disc of radius 1, darker in the middle, see-through at its edge. */
function tableTop(colour: string, shade: number): RingGeometry {
  const disc = new RingGeometry(0, 1, 64, 40);
  const { r, g, b } = new Color(colour);
  const place = disc.getAttribute('position');
  const colours = new Float32Array(4 * place.count);
  for (let at = 0; at < place.count; at += 1) {
    const out = Math.hypot(place.getX(at), place.getY(at));
    const light = 1 - shade * (1 - smooth((out * tableSize) / shadeSize)) ** 1.5;
    const opacity = 1 - smooth((out - 0.35) / 0.65);
    colours.set([r * light, g * light, b * light, opacity], 4 * at);
  }
  disc.setAttribute('color', new BufferAttribute(colours, 4));
  return disc;
}

/** 0 below 0, 1 above 1, smooth between. */
function smooth(share: number): number {
  const t = Math.min(1, Math.max(0, share));
  return t * t * (3 - 2 * t);
}
