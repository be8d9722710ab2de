import { useEffect, useState } from 'react';
import { appWords } from '#words/app.ts';

interface Props {
  readonly onFiles: (files: readonly File[]) => void;
  /** What is said while files are held over the page. */
  readonly words?: string;
}

/** Takes files dropped anywhere on the page, and says so while they are held over it. */
export function FileDrop({ onFiles, words = appWords.file.drop }: Props) {
  const [isOver, setOver] = useState(false);
  useEffect(() => {
    const hasFile = ({ dataTransfer }: DragEvent) => dataTransfer?.types.includes('Files') ?? false;
    const over = (event: DragEvent) => {
      if (!hasFile(event)) return;
      event.preventDefault();
      setOver(true);
    };
    const leave = (event: DragEvent) => {
      if (event.relatedTarget === null) setOver(false);
    };
    const drop = (event: DragEvent) => {
      if (!hasFile(event)) return;
      event.preventDefault();
      setOver(false);
      const files = [...(event.dataTransfer?.files ?? [])];
      if (files.length > 0) onFiles(files);
    };
    const listening = new AbortController();
    const { signal } = listening;
    globalThis.addEventListener('dragover', over, { signal });
    globalThis.addEventListener('dragleave', leave, { signal });
    globalThis.addEventListener('drop', drop, { signal });
    return () => listening.abort();
  }, [onFiles]);
  return isOver ? <div className="file-drop">{words}</div> : null;
}
