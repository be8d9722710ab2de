import { useCallback, useRef, useState } from 'react';
import { appWords } from '#words/app.ts';
import { useKeepState } from '../keep/shelf/keepState.ts';
import { presentStudio, useStudio } from '../keep/useStudio.ts';
import { FilePick } from './FilePick.tsx';
import { fetched } from './fetched.tsx';
import { Missed } from './Missed.tsx';
import { savePlan, saveRowsNow } from './save.ts';
import { useShutMenu } from './useShutMenu.ts';

const link = fetched(async () => (await import('./take/LinkDialog.tsx')).LinkDialog);

interface Props {
  readonly onFiles: (files: readonly File[]) => void;
}

/** What is done with the plan as a file, behind one button. */
export function FileMenu({ onFiles }: Props) {
  const [isOpen, setOpen] = useState(false);
  const [isLinked, setLinked] = useState(false);
  const id = useStudio(({ history }) => history.id);
  const hasShelf = useKeepState(({ db }) => db !== null);
  const hasSettled = useStudio(({ basket }) => basket !== null);
  const menu = useRef<HTMLDivElement>(null);
  const button = useRef<HTMLButtonElement>(null);
  const shut = useCallback((byKey: boolean) => {
    setOpen(false);
    if (byKey) button.current?.focus();
  }, []);
  useShutMenu(menu, isOpen, shut);
  const act = (what: () => void) => () => {
    setOpen(false);
    what();
  };
  return (
    <div ref={menu} className="menu">
      <button
        ref={button}
        type="button"
        aria-expanded={isOpen}
        aria-controls="file-menu"
        onClick={() => setOpen(!isOpen)}
      >
        {appWords.file.menu} <span aria-hidden="true">▾</span>
      </button>
      <div id="file-menu" className="menu-list" hidden={!isOpen}>
        <FilePick
          label={appWords.file.open}
          isMany
          onFiles={(files) => act(() => onFiles(files))()}
        />
        <button type="button" onClick={act(() => savePlan(presentStudio().plan))}>
          {appWords.file.save}
        </button>
        <button type="button" onClick={act(() => setLinked(true))}>
          {appWords.file.copyLink}
        </button>
        <a
          className="menu-link"
          href={hasShelf ? `#versions=${id}` : '#shelf'}
          onClick={() => shut(true)}
        >
          {appWords.file.earlierVersions}
        </a>
        <button type="button" disabled={!hasSettled} onClick={act(saveRowsNow)}>
          {appWords.file.rowChart}
        </button>
      </div>
      {isLinked && (
        <link.View
          onClose={() => setLinked(false)}
          missed={(again) => <Missed again={again} onClose={() => setLinked(false)} />}
        />
      )}
    </div>
  );
}
