import { stageWords } from '#words/stage.ts';
import type { Finding } from '../model/basket.ts';

interface Props {
  readonly findings: readonly Finding[];
  readonly onPress: () => void;
}

/** How many findings there are to look at, notes left out, the gravest kind in colour; nothing where there is nothing to look at. */
export function FindingsButton({ findings, onPress }: Props) {
  const grave = findings.filter(({ severity }) => severity !== 'note');
  if (grave.length === 0) return null;
  const severity = grave.some((one) => one.severity === 'stop') ? 'stop' : 'warn';
  return (
    <button type="button" className="findings-button" data-severity={severity} onClick={onPress}>
      {stageWords.toLookAt(grave.length)}
    </button>
  );
}
