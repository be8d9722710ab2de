import { useEffect } from 'react';
import { appWords } from '#words/app.ts';
import { linkMark } from '../../export/linkMark.ts';
import { presentStudio } from '../../keep/useStudio.ts';

/** Takes in the plan that an address carries after its #, if it carries one. */
export function useLink(hash: string): void {
  useEffect(() => {
    if (!hash.startsWith(linkMark)) return;
    const { pathname, search } = globalThis.location;
    // so that loading the page again does not ask once more
    globalThis.history.replaceState(null, '', `${pathname}${search}#plan`);
    // which the browser itself does not tell, so that the same link could be opened only once
    globalThis.dispatchEvent(new HashChangeEvent('hashchange'));
    import('./takeLink.ts')
      .then(({ takeLink }) => takeLink(hash))
      .catch(() => presentStudio().showProblem(appWords.file.linkNotOpened));
  }, [hash]);
}
