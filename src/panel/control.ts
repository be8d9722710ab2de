/** What a control of the plan panel shows, and what it does with what a person enters. */
import type { TradeWord } from '../form/tradeWords.ts';
import type { Unit } from '../plan/schema.ts';

/** Takes the new value; gives back why it cannot be, or null. `stepped` for keys and buttons. */
export type Commit<Value> = (value: Value, stepped: boolean) => string | null;

interface Labelled {
  readonly label: string;
  /** A word of the trade in the label, explained beside it. */
  readonly word?: TradeWord | undefined;
}

export interface LengthControl extends Labelled {
  readonly kind: 'length';
  /** Length and its limits, mm. */
  readonly mm: number;
  readonly least: number;
  readonly most: number;
  readonly unit: Unit;
  readonly onCommit: Commit<number>;
}

export interface CountControl extends Labelled {
  readonly kind: 'count';
  readonly count: number;
  readonly least: number;
  readonly most: number;
  readonly onCommit: Commit<number>;
}

export interface Choice {
  readonly value: string;
  readonly text: string;
}

export interface ChoiceControl extends Labelled {
  readonly kind: 'choice';
  readonly value: string;
  readonly choices: readonly Choice[];
  readonly onCommit: Commit<string>;
}

/** A plain number without a unit: a share, or a ratio. */
export interface ShareControl extends Labelled {
  readonly kind: 'share';
  readonly share: number;
  readonly least: number;
  readonly most: number;
  readonly onCommit: Commit<number>;
}

export interface ColourControl extends Labelled {
  readonly kind: 'colour';
  /** Name of a dye, or `#rrggbb`. */
  readonly colour: string;
  readonly onCommit: Commit<string>;
}

export type Control = LengthControl | CountControl | ChoiceControl | ShareControl | ColourControl;

/** Controls by a key of their own, in the order shown. */
export type Controls = Readonly<Record<string, Control>>;

/** The label of a control, and what a change by it is called where it can be undone. */
export interface ControlWords {
  readonly label: string;
  readonly act: string;
}

/** `values` as choices, each by its text. */
export function choicesOf<Value extends string>(
  values: readonly Value[],
  texts: Readonly<Record<Value, string>>,
): readonly Choice[] {
  return values.map((value) => ({ value, text: texts[value] }));
}
