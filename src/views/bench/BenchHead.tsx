import { benchWords } from '#words/bench.ts';
import { withNewRecord } from '../../keep/benchBook.ts';
import { changeBenchPage } from '../../keep/benchHere.ts';
import { HelpButton } from '../help/HelpButton.tsx';
import type { BenchWork } from './benchWork.ts';

const { head: words, steps, toPlan } = benchWords;

interface Props {
  readonly work: BenchWork;
  readonly isAwake: boolean;
  readonly onHelp: () => void;
}

/** Back to the plan, what is woven, and which of its baskets. */
export function BenchHead({ work, isAwake, onHelp }: Props) {
  const { plan, page, record, isKept } = work;
  const choose = (id: string) => {
    if (id === 'new') changeBenchPage(withNewRecord, steps.newBasket);
    else changeBenchPage((now) => ({ ...now, chosen: id }), steps.otherBasket);
  };
  return (
    <header className="bench-head">
      <a className="bench-back" href="#plan">
        {toPlan}
      </a>
      <h1 className="bench-name">{plan.name}</h1>
      <label className="bench-record">
        <span className="unseen">{words.basket}</span>
        <select value={record.id} onChange={({ target }) => choose(target.value)}>
          {page.records.map(({ id, name }) => (
            <option key={id} value={id}>
              {name}
            </option>
          ))}
          <option value="new">{words.oneMore}</option>
        </select>
      </label>
      {isAwake && <span className="bench-awake soft">{words.awake}</span>}
      <HelpButton onHelp={onHelp} />
      {!isKept && (
        <p className="bench-warning" role="status">
          {words.notKept}
        </p>
      )}
    </header>
  );
}
