import { useCallback, useSyncExternalStore } from 'react';

/** Whether a media query holds, now and as it changes. */
export function useMedia(query: string): boolean {
  const subscribe = useCallback(
    (onChange: () => void) => {
      const media = globalThis.matchMedia(query);
      media.addEventListener('change', onChange);
      return () => media.removeEventListener('change', onChange);
    },
    [query],
  );
  return useSyncExternalStore(subscribe, () => globalThis.matchMedia(query).matches);
}
