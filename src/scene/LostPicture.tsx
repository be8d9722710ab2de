import { useThree } from '@react-three/fiber';
import { useEffect } from 'react';

interface Props {
  readonly onLost: (isLost: boolean) => void;
}

/** Says when the browser has taken the picture's graphics away, and when they are back. */
export function LostPicture({ onLost }: Props) {
  const { gl, invalidate } = useThree();
  useEffect(() => {
    const canvas = gl.domElement;
    const lost = (event: Event) => {
      // tells the browser that we want it back
      event.preventDefault();
      onLost(true);
    };
    const restored = () => {
      onLost(false);
      gl.shadowMap.needsUpdate = true;
      invalidate();
    };
    canvas.addEventListener('webglcontextlost', lost);
    canvas.addEventListener('webglcontextrestored', restored);
    return () => {
      canvas.removeEventListener('webglcontextlost', lost);
      canvas.removeEventListener('webglcontextrestored', restored);
    };
  }, [gl, invalidate, onLost]);
  return null;
}
