/** Questions that an action puts to the person before it goes on, one at a time. */
import { useSyncExternalStore } from 'react';

export interface Choice {
  readonly value: string;
  readonly label: string;
}

export interface Question {
  readonly title: string;
  readonly text: string;
  /** The first is the one that is suggested. Closing the question is the last. */
  readonly choices: readonly [Choice, ...Choice[]];
  /** Words of a box that has the answer hold for all that follow; none where it is left out. */
  readonly forAll?: string;
}

export interface Answer {
  readonly value: string;
  readonly isForAll: boolean;
}

export interface OpenQuestion {
  readonly number: number;
  readonly question: Question;
  readonly answer: (answer: Answer) => void;
}

let asked = 0;
let waiting: readonly OpenQuestion[] = [];
const listeners = new Set<() => void>();

/** Asks, once earlier questions are answered. */
export function ask(question: Question): Promise<Answer> {
  return new Promise((resolve) => {
    asked += 1;
    const open: OpenQuestion = {
      number: asked,
      question,
      answer(answer) {
        waiting = waiting.filter((one) => one !== open);
        tell();
        resolve(answer);
      },
    };
    waiting = [...waiting, open];
    tell();
  });
}

/** Closes the question unanswered, which is the last of its choices. */
export function leave({ question: { choices }, answer }: OpenQuestion): void {
  answer({ value: choices.at(-1)?.value ?? choices[0].value, isForAll: false });
}

/** The question that is open; null where there is none. */
export function useOpenQuestion(): OpenQuestion | null {
  return useSyncExternalStore(subscribe, () => waiting[0] ?? null);
}

function tell(): void {
  for (const listener of listeners) listener();
}

function subscribe(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}
