import { useEffect, useMemo, useState } from 'react';
import { printWords } from '#words/print.ts';
import type { Page } from '../../export/pdf/page/mark.ts';
import type { Paper } from '../../export/pdf/page/paper.ts';
import type { Basket } from '../../model/basket.ts';
import { download, fileStem } from '../save.ts';
import type { PrintKind } from './printing.ts';
import { pagesOf, painted, pdfOf, readyPress } from './printing.ts';

interface Printing {
  readonly pages: readonly Page[];
  /** What is going on or has gone wrong, for the person at the page; null when all is done. */
  readonly doing: string | null;
  readonly save: (kind: PrintKind) => void;
}

/** Pages to look at, and the way to have them as files. */
export function usePages(basket: Basket, kind: PrintKind, paper: Paper, baskets: number): Printing {
  const [pages, setPages] = useState<readonly Page[]>([]);
  const [doing, say] = useState<string | null>(printWords.gettingLetters);
  const wish = useMemo(() => ({ paper, baskets, date: new Date() }), [paper, baskets]);

  useEffect(() => {
    let isWanted = true;
    const layOut = async () => {
      const press = await readyPress();
      if (!isWanted) return;
      say(printWords.layingOut);
      await painted();
      if (!isWanted) return;
      setPages(pagesOf(kind, basket, press, wish));
      say(null);
    };
    layOut().catch((error: unknown) => {
      if (isWanted) say(failure(error));
    });
    return () => {
      isWanted = false;
    };
  }, [basket, kind, wish]);

  const save = (wanted: PrintKind) => {
    const write = async () => {
      say(printWords.writing[wanted]);
      await painted();
      const pdf = await pdfOf(wanted, basket, await readyPress(), wish);
      const name = printWords.fileName[wanted](fileStem(basket.plan.name));
      download(name, 'application/pdf', new Uint8Array(pdf));
      say(null);
    };
    write().catch((error: unknown) => say(failure(error)));
  };
  return { pages, doing, save };
}

function failure(error: unknown): string {
  return printWords.failed(error instanceof Error ? error.message : String(error));
}
