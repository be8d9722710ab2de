import { appWords } from '#words/app.ts';

/** Opens the help of a page: last in its head, wherever one is. */
export function HelpButton({ onHelp }: { readonly onHelp: () => void }) {
  return (
    <button
      type="button"
      data-tour="help"
      aria-label={appWords.help}
      title={appWords.helpWithKey}
      onClick={onHelp}
    >
      ?
    </button>
  );
}
