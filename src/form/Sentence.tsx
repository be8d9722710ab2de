import type { ReactNode } from 'react';
import { Fragment } from 'react';

interface Props {
  /** A text with places in it, as `Press {key} to weave it`. */
  readonly text: string;
  /** What stands at each place. */
  readonly places: Readonly<Record<string, ReactNode>>;
}

/** A text with other things in it than text, wherever in the sentence a language puts them. */
export function Sentence({ text, places }: Props) {
  return text.split(/\{(\w+)\}/).map((part, index) => (
    // biome-ignore lint/suspicious/noArrayIndexKey: parts have no other name and never move
    <Fragment key={index}>{index % 2 ? places[part] : part}</Fragment>
  ));
}
