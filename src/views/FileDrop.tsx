import { useEffect, useState } from 'react';

interface Props {
  readonly onFile: (file: File) => void;
}

/** Takes a file dropped anywhere on the page, and says so while one is held over it. */
export function FileDrop({ onFile }: Props) {
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
      const file = event.dataTransfer?.files[0];
      if (file) onFile(file);
    };
    const listening = new AbortController();
    const { signal } = listening;
    globalThis.addEventListener('dragover', over, { signal });
    globalThis.addEventListener('dragleave', leave, { signal });
    globalThis.addEventListener('drop', drop, { signal });
    return () => listening.abort();
  }, [onFile]);
  return isOver ? <div className="file-drop">Drop the plan here to open it</div> : null;
}
