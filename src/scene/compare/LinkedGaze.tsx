import type { OrbitControls } from '@react-three/drei';
import { useThree } from '@react-three/fiber';
import type { ComponentRef } from 'react';
import { useEffect } from 'react';
import type { Gaze } from './gaze.ts';
import { moveGaze } from './gaze.ts';

type Hands = ComponentRef<typeof OrbitControls>;

/** Ties this picture's eye to `gaze`: what turns one turns all. */
export function LinkedGaze({ gaze }: { readonly gaze: Gaze }) {
  const hands = useThree(({ controls }) => controls) as Hands | null;
  const { camera, invalidate } = useThree();
  useEffect(() => {
    if (!hands) return;
    let isFollowing = false;
    const follow = () => {
      isFollowing = true;
      camera.position.copy(gaze.position);
      hands.target.copy(gaze.target);
      hands.update();
      isFollowing = false;
      invalidate();
    };
    const lead = () => {
      if (!isFollowing) moveGaze(gaze, camera.position, hands.target, follow);
    };
    if (gaze.position.lengthSq() > 0) follow();
    gaze.followers.add(follow);
    hands.addEventListener('change', lead);
    return () => {
      gaze.followers.delete(follow);
      hands.removeEventListener('change', lead);
    };
  }, [hands, camera, gaze, invalidate]);
  return null;
}
