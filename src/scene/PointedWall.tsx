import type { ThreeEvent } from '@react-three/fiber';
import { useEffect, useMemo, useRef } from 'react';
import type { Intersection, Raycaster } from 'three';
import { BufferGeometry, DoubleSide, Mesh } from 'three';
import { wallBands } from '../mesh/wallBands.ts';
import type { Basket } from '../model/basket.ts';
import { fillGeometry, upright } from './toThree.ts';

interface Props {
  /** The basket as it is now; null before the first. */
  readonly basketNow: () => Basket | null;
  readonly onRow: (row: number | null) => void;
}

/**
 * The wall as the pointer feels it: not drawn, it tells which row is pointed at. It is made when a
 * pointer is tried against it, so that a drag elsewhere does not make one for every shape.
 */
export function PointedWall({ basketNow, onRow }: Props) {
  const geometry = useMemo(() => new BufferGeometry(), []);
  const last = useRef<number | null>(null);
  const trianglesPerRow = useRef(1);
  const felt = useRef<Basket | null>(null);
  useEffect(() => () => geometry.dispose(), [geometry]);
  const raycast = useMemo(
    () =>
      function (this: Mesh, ray: Raycaster, hits: Intersection[]): void {
        const basket = basketNow();
        if (!basket) return;
        if (basket !== felt.current) {
          const bands = wallBands(basket);
          fillGeometry(geometry, bands);
          geometry.boundingSphere = null;
          trianglesPerRow.current = bands.trianglesPerRow;
          felt.current = basket;
        }
        Mesh.prototype.raycast.call(this, ray, hits);
      },
    [geometry, basketNow],
  );

  const say = (row: number | null) => {
    if (row === last.current) return;
    last.current = row;
    onRow(row);
  };
  const point = (event: ThreeEvent<PointerEvent>) => {
    // a button held down is turning the basket
    if (event.pointerType !== 'touch' && event.buttons !== 0) return;
    const { faceIndex } = event;
    if (typeof faceIndex === 'number') say(Math.floor(faceIndex / trianglesPerRow.current) + 1);
  };

  return (
    <mesh
      {...upright}
      geometry={geometry}
      raycast={raycast}
      visible={false}
      onPointerMove={point}
      onPointerDown={point}
      onPointerOut={() => say(null)}
    >
      <meshBasicMaterial side={DoubleSide} />
    </mesh>
  );
}
