import { useCallback, useMemo, useSyncExternalStore } from 'react';

/** Whether a media query holds, now and as it changes. */
export function useMedia(query: string): boolean {
  const media = useMemo(() => globalThis.matchMedia(query), [query]);
  const subscribe = useCallback(
    (onChange: () => void) => {
      media.addEventListener('change', onChange);
      return () => media.removeEventListener('change', onChange);
    },
    [media],
  );
  return useSyncExternalStore(subscribe, () => media.matches);
}
