/**
 * A line to one worker. At most one question is out and one waits; a newer one takes the waiting
 * one's place. A worker that fails or keeps silent too long is replaced.
 */
import { workWords } from '#words/work.ts';
import type { Answer, Question } from './question.ts';

/** The part of a Worker that a line uses. */
export interface WorkerPort {
  onmessage: ((event: MessageEvent<Answer>) => void) | null;
  onerror: ((event: ErrorEvent) => void) | null;
  onmessageerror: ((event: MessageEvent) => void) | null;
  postMessage(question: Question): void;
  terminate(): void;
}

export interface Line {
  /** Asks, now or as soon as the question that is out has been answered. */
  ask(question: Question): void;
  /** Drops what waits, and ends the worker if it is at work. */
  cancel(): void;
  /** Drops everything and ends the worker; a later question would start another. */
  dispose(): void;
}

export interface LineOptions {
  readonly start: () => WorkerPort;
  readonly onAnswer: (answer: Answer) => void;
  /** How long a question may take before the worker is given up, ms. */
  readonly patience: number;
}

/** A line whose worker starts with the first question. */
export function line({ start, onAnswer, patience }: LineOptions): Line {
  let worker: WorkerPort | null = null;
  let out: Question | null = null;
  let waiting: Question | null = null;
  let watch: ReturnType<typeof setTimeout> | undefined;

  const post = (question: Question) => {
    out = question;
    watch = setTimeout(() => fail(workWords.noAnswer(Math.round(patience / 1000))), patience);
    try {
      worker ??= started();
      worker.postMessage(question);
    } catch (error) {
      fail(workWords.notStarted(String(error)));
    }
  };
  const started = () => {
    const port = start();
    port.onmessage = ({ data }) => {
      if (port === worker) finish(data);
    };
    port.onerror = (event) => {
      event.preventDefault?.();
      if (port === worker) fail(event.message || workWords.stopped);
    };
    port.onmessageerror = () => {
      if (port === worker) fail(workWords.unreadable);
    };
    return port;
  };
  const finish = (answer: Answer) => {
    clearTimeout(watch);
    out = null;
    const next = waiting;
    waiting = null;
    if (next) post(next);
    onAnswer(answer);
  };
  const fail = (reason: string) => {
    const number = out?.number ?? 0;
    end();
    finish({ kind: 'failed', number, reason });
  };
  const end = () => {
    clearTimeout(watch);
    worker?.terminate();
    worker = null;
  };
  return {
    ask(question) {
      if (out) waiting = question;
      else post(question);
    },
    cancel() {
      if (out) end();
      waiting = null;
      out = null;
    },
    dispose() {
      end();
      waiting = null;
      out = null;
    },
  };
}
