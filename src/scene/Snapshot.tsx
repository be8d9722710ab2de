import { useThree } from '@react-three/fiber';
import { useEffect } from 'react';

/** A copy of the picture as it is now, its longer side `longest` pixels or more. */
export type TakePicture = (longest: number) => HTMLCanvasElement;

interface Props {
  /** Told how to take a picture, and null once there is none to take. */
  readonly onReady: (take: TakePicture | null) => void;
}

/** Lets the page take this picture for a file, finer than it is on the screen. */
export function Snapshot({ onReady }: Props) {
  const { gl, scene, camera, size } = useThree();
  useEffect(() => {
    onReady((longest) => {
      const shown = gl.getPixelRatio();
      // the renderer rounds down
      gl.setPixelRatio(Math.max(shown, (longest + 0.5) / Math.max(1, size.width, size.height)));
      try {
        gl.render(scene, camera);
        // at once: a picture is gone with the next frame
        return copied(gl.domElement);
      } finally {
        gl.setPixelRatio(shown);
        gl.render(scene, camera);
      }
    });
    return () => onReady(null);
  }, [gl, scene, camera, size, onReady]);
  return null;
}

function copied(from: HTMLCanvasElement): HTMLCanvasElement {
  const copy = document.createElement('canvas');
  copy.width = from.width;
  copy.height = from.height;
  copy.getContext('2d')?.drawImage(from, 0, 0);
  return copy;
}
