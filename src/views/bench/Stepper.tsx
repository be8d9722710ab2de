import { benchWords } from '#words/bench.ts';

const words = benchWords.aims;

interface Props {
  readonly label: string;
  readonly value: string;
  readonly aside?: string;
  readonly onStep: (by: 1 | -1) => void;
}

/** A value with a button less and a button more. */
export function Stepper({ label, value, aside, onStep }: Props) {
  return (
    <fieldset className="stepper">
      <legend>{label}</legend>
      <button type="button" aria-label={words.less(label)} onClick={() => onStep(-1)}>
        −
      </button>
      <output>
        {value}
        {aside && <small>{aside}</small>}
      </output>
      <button type="button" aria-label={words.more(label)} onClick={() => onStep(1)}>
        +
      </button>
    </fieldset>
  );
}
