import type { ThreeEvent } from '@react-three/fiber';
import { useEffect, useLayoutEffect, useMemo, useRef } from 'react';
import { BufferGeometry, DoubleSide } from 'three';
import { wallBands } from '../mesh/wallBands.ts';
import type { Basket } from '../model/basket.ts';
import { fillGeometry, upright } from './toThree.ts';

interface Props {
  readonly basket: Basket;
  readonly onRow: (row: number | null) => void;
}

/** The wall as the pointer feels it: not drawn, it tells which row is pointed at. */
export function PointedWall({ basket, onRow }: Props) {
  const geometry = useMemo(() => new BufferGeometry(), []);
  const last = useRef<number | null>(null);
  const bands = useMemo(() => wallBands(basket), [basket]);
  useEffect(() => () => geometry.dispose(), [geometry]);
  useLayoutEffect(() => fillGeometry(geometry, bands), [geometry, bands]);

  const say = (row: number | null) => {
    if (row === last.current) return;
    last.current = row;
    onRow(row);
  };
  const point = (event: ThreeEvent<PointerEvent>) => {
    // a button held down is turning the basket
    if (event.pointerType !== 'touch' && event.buttons !== 0) return;
    const { faceIndex } = event;
    if (typeof faceIndex === 'number') say(Math.floor(faceIndex / bands.trianglesPerRow) + 1);
  };

  return (
    <mesh
      {...upright}
      geometry={geometry}
      onPointerMove={point}
      onPointerDown={point}
      onPointerOut={() => say(null)}
    >
      <meshBasicMaterial colorWrite={false} depthWrite={false} side={DoubleSide} />
    </mesh>
  );
}
