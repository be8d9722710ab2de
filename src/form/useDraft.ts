import { useState } from 'react';

export interface Draft {
  /** What has been typed and not yet taken; null while the value itself is shown. */
  readonly typed: string | null;
  readonly problem: string | null;
  readonly type: (text: string) => void;
  readonly refuse: (problem: string) => void;
  /** Back to the value as it is. */
  readonly forget: () => void;
  /** Hands a number on; what was typed stays if it is refused. */
  readonly take: (value: number, stepped: boolean) => void;
}

/** Text being typed into a field of `value`. A value changed from elsewhere ends the typing. */
export function useDraft(
  value: number,
  onCommit: (value: number, stepped: boolean) => string | null,
): Draft {
  const [seen, setSeen] = useState(value);
  const [typed, setTyped] = useState<string | null>(null);
  const [problem, setProblem] = useState<string | null>(null);
  const forget = () => {
    setTyped(null);
    setProblem(null);
  };
  if (seen !== value) {
    setSeen(value);
    forget();
  }
  const take = (to: number, stepped: boolean) => {
    const refusal = onCommit(to, stepped);
    setProblem(refusal);
    if (refusal === null) setTyped(null);
  };
  return { typed, problem, type: setTyped, refuse: setProblem, forget, take };
}
