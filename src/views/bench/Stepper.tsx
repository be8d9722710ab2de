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
      <button type="button" aria-label={`${label}: less`} onClick={() => onStep(-1)}>
        −
      </button>
      <output>
        {value}
        {aside && <small>{aside}</small>}
      </output>
      <button type="button" aria-label={`${label}: more`} onClick={() => onStep(1)}>
        +
      </button>
    </fieldset>
  );
}
