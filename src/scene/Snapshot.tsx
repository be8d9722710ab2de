import { useThree } from '@react-three/fiber';
import { useEffect } from 'react';

/** Draws the picture anew and gives its canvas, to be copied at once. */
export type TakePicture = () => HTMLCanvasElement;

interface Props {
  /** Told how to take a picture, and null once there is none to take. */
  readonly onReady: (take: TakePicture | null) => void;
}

/** Lets the page take this picture for a file. */
export function Snapshot({ onReady }: Props) {
  const { gl, scene, camera } = useThree();
  useEffect(() => {
    onReady(() => {
      gl.render(scene, camera);
      return gl.domElement;
    });
    return () => onReady(null);
  }, [gl, scene, camera, onReady]);
  return null;
}
