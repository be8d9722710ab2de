import { useEffect, useState } from 'react';

/** Keeps the screen awake while the bench is seen; whether the browser does it. */
export function useWakeLock(): boolean {
  const [isAwake, setAwake] = useState(false);
  useEffect(() => {
    let lock: WakeLockSentinel | null = null;
    let isOver = false;
    const ask = async () => {
      if (!('wakeLock' in navigator) || document.visibilityState !== 'visible') return;
      try {
        const given = await navigator.wakeLock.request('screen');
        if (isOver) return void given.release();
        lock = given;
        setAwake(true);
        given.addEventListener('release', () => setAwake(false));
      } catch {
        // A flat battery, or a browser that does not allow it: the bench works all the same.
        setAwake(false);
      }
    };
    void ask();
    document.addEventListener('visibilitychange', ask);
    return () => {
      isOver = true;
      document.removeEventListener('visibilitychange', ask);
      void lock?.release();
    };
  }, []);
  return isAwake;
}
