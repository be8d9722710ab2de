import type { ComponentType, ReactNode } from 'react';
import { useEffect, useState } from 'react';

interface Meanwhile {
  /** Shown while the view is on its way. */
  readonly standIn?: ReactNode;
  /** What is shown where it does not come; `again` fetches it once more. Without it, that is thrown. */
  readonly missed?: (again: () => void) => ReactNode;
}

/** A view whose script is fetched when it is first wanted. */
export interface Fetched<Props> {
  /** The view. Throws, for a `SafetyNet`, where it does not come and nothing is said of what to show then. */
  readonly View: ComponentType<Props & Meanwhile>;
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
  function View({ standIn, missed, ...props }: Props & Meanwhile) {
    const [Shown, setShown] = useState(() => there);
    const [failed, setFailed] = useState<{ readonly error: unknown } | null>(null);
    useEffect(() => {
      if (Shown || failed) return;
      let isWanted = true;
      fetch().then(
        () => isWanted && setShown(() => there),
        (error: unknown) => isWanted && setFailed({ error }),
      );
      return () => {
        isWanted = false;
      };
    }, [Shown, failed]);
    if (failed) {
      if (!missed) throw failed.error;
      return missed(() => {
        stylesAgain();
        setFailed(null);
      });
    }
    // what is left without the others are the props of what was loaded
    return Shown ? <Shown {...(props as unknown as Props)} /> : standIn;
  }
  return { View, fetch };
}

/**
 * Asks again for the style sheets that the build's loader has put in the page, with their whole address. It
 * asks for each but once, and browsers do not agree on how one that did not come is told from another.
 */
function stylesAgain(): void {
  for (const link of document.querySelectorAll('link[rel=stylesheet][href^=http]')) {
    const another = link.cloneNode() as HTMLLinkElement;
    // what is there stays until the other is, which may not come either
    another.addEventListener('load', () => link.remove());
    another.addEventListener('error', () => another.remove());
    link.after(another);
  }
}
