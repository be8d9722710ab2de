import { useRef } from 'react';

interface Props {
  readonly onFile: (file: File) => void;
}

/** Opens a plan that was saved as a file. */
export function OpenButton({ onFile }: Props) {
  const input = useRef<HTMLInputElement>(null);
  return (
    <>
      <button type="button" onClick={() => input.current?.click()}>
        Open
      </button>
      <input
        ref={input}
        type="file"
        accept=".json,application/json"
        aria-label="Plan file to open"
        tabIndex={-1}
        hidden
        onChange={({ target }) => {
          const file = target.files?.[0];
          if (file) onFile(file);
          target.value = '';
        }}
      />
    </>
  );
}
