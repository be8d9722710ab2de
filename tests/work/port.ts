import type { WorkerPort } from '../../src/work/line.ts';
import type { Answer, Question } from '../../src/work/question.ts';

/** The page's end of a wire with nobody at the other end: the test answers as it likes. */
export class Port implements WorkerPort {
  onmessage: ((event: MessageEvent<Answer>) => void) | null = null;
  onerror: ((event: ErrorEvent) => void) | null = null;
  onmessageerror: ((event: MessageEvent) => void) | null = null;
  readonly asked: Question[] = [];
  isEnded = false;

  postMessage(question: Question): void {
    this.asked.push(structuredClone(question));
  }

  terminate(): void {
    this.isEnded = true;
  }

  /** The question that came last. */
  get last(): Question {
    const question = this.asked.at(-1);
    if (!question) throw new Error('nothing was asked');
    return question;
  }

  answer(answer: Answer): void {
    this.onmessage?.(new MessageEvent('message', { data: answer }));
  }

  fail(number = this.last.number, reason = 'Error: no shape'): void {
    this.answer({ kind: 'failed', number, reason });
  }

  /** Stops as a worker does whose script throws outside of an answer. */
  break(message: string): void {
    const event = new Event('error', { cancelable: true });
    this.onerror?.(Object.assign(event, { message }) as ErrorEvent);
  }
}

/** Starts ports, and keeps them in the order they were started in. */
export function ports() {
  const started: Port[] = [];
  return {
    started,
    start: () => {
      const port = new Port();
      started.push(port);
      return port;
    },
    /** The port started last. */
    get last(): Port {
      const port = started.at(-1);
      if (!port) throw new Error('no worker was started');
      return port;
    },
  };
}
