import { appWords } from '#words/app.ts';

interface Props {
  /** One line for each thing that is wrong. */
  readonly problem: string;
  readonly onDismiss: () => void;
}

/** Says what is wrong, above everything, until it is put away. */
export function ProblemBanner({ problem, onDismiss }: Props) {
  const [first, ...more] = problem.split('\n');
  return (
    <div className="problem" role="alert">
      <div className="problem-text">
        <p>{first}</p>
        {more.length > 0 && (
          <ul>
            {more.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        )}
      </div>
      <button type="button" onClick={onDismiss}>
        {appWords.putAway}
      </button>
    </div>
  );
}
