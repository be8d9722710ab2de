import { appWords } from '#words/app.ts';
import { helpWords } from '#words/help.ts';
import { stageWords } from '#words/stage.ts';
import { stageViews } from '../stageViews.ts';

/** A key, and what it does. */
export type HelpKey = readonly [keys: string, does: string];

const { key, does } = helpWords;

const onStage: readonly HelpKey[] = stageViews.map(
  ({ view }, index) => [`${index + 1}`, stageWords.viewNames[view]] as const,
);
const onLine: readonly HelpKey[] = [
  [key.undo, appWords.undo],
  [key.redo, appWords.redo],
  [key.arrows, does.arrows],
  [key.add, does.add],
  [key.delete, does.delete],
];
const everywhere: readonly HelpKey[] = [
  [key.help, does.help],
  [key.escape, does.escape],
];

/** The keys that work on each page. */
export const helpKeys = {
  plan: [...onStage, ...onLine, ...everywhere],
  compare: [...onStage, ...onLine, [key.other, does.other], ...everywhere],
  bench: everywhere,
  shelf: everywhere,
} as const satisfies Readonly<Record<string, readonly HelpKey[]>>;
