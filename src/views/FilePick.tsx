import { useRef } from 'react';
import { appWords } from '#words/app.ts';

interface Props {
  readonly label: string;
  /** Several files may be chosen at once. */
  readonly isMany?: boolean;
  readonly onFiles: (files: readonly File[]) => void;
}

/** A button that has plan files chosen. */
export function FilePick({ label, isMany = false, onFiles }: Props) {
  const input = useRef<HTMLInputElement>(null);
  return (
    <>
      <button type="button" onClick={() => input.current?.click()}>
        {label}
      </button>
      <input
        ref={input}
        type="file"
        accept=".json,application/json,.zip,application/zip"
        multiple={isMany}
        aria-label={appWords.file.pick}
        tabIndex={-1}
        hidden
        onChange={({ target }) => {
          const files = [...(target.files ?? [])];
          target.value = '';
          if (files.length > 0) onFiles(files);
        }}
      />
    </>
  );
}
