import { appWords } from '#words/app.ts';

/** The app's name and sign at the head of a page. */
export function Wordmark() {
  return (
    <h1 className="wordmark">
      <img src="./icon.svg" alt="" width="28" height="28" />
      {appWords.name}
    </h1>
  );
}
