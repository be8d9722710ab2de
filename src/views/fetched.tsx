import type { ComponentType, ReactNode } from 'react';
import { useEffect, useState } from 'react';

/** A view whose script is fetched when it is first wanted. */
export interface Fetched<Props> {
  /** The view; `standIn` is shown while it is on its way. Throws, for a `SafetyNet`, where it does not come. */
  readonly View: ComponentType<Props & { readonly standIn?: ReactNode }>;
  /** Fetches the script ahead. Rejects where it does not come; it is tried again when it is wanted. */
  readonly fetch: () => Promise<void>;
}

/**
 * Makes a view of what `load` brings. React's own `lazy` shows what stands in for a view even where its
 * script is long there, and then for 300 ms at least.
 */
export function fetched<Props extends object>(
  load: () => Promise<ComponentType<Props>>,
): Fetched<Props> {
  let there: ComponentType<Props> | null = null;
  const fetch = async () => {
    there = await load();
  };
  // biome-ignore lint/correctness/noComponentHookFactories: made once, when a module is read, as `lazy` is
  function View({ standIn, ...props }: Props & { readonly standIn?: ReactNode }) {
    const [Shown, setShown] = useState(() => there);
    const [failed, setFailed] = useState<{ readonly error: unknown } | null>(null);
    useEffect(() => {
      if (Shown) return;
      let isWanted = true;
      fetch().then(
        () => isWanted && setShown(() => there),
        (error: unknown) => isWanted && setFailed({ error }),
      );
      return () => {
        isWanted = false;
      };
    }, [Shown]);
    if (failed) throw failed.error;
    // what is left without `standIn` are the props of what was loaded
    return Shown ? <Shown {...(props as unknown as Props)} /> : standIn;
  }
  return { View, fetch };
}
