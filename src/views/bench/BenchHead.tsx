import { withNewRecord } from '../../keep/benchBook.ts';
import { changeBenchPage } from '../../keep/benchHere.ts';
import type { BenchWork } from './benchWork.ts';

interface Props {
  readonly work: BenchWork;
  readonly isAwake: boolean;
}

/** Back to the plan, what is woven, and which of its baskets. */
export function BenchHead({ work, isAwake }: Props) {
  const { plan, page, record, isKept } = work;
  const choose = (id: string) => {
    if (id === 'new') changeBenchPage(withNewRecord, 'another basket of this plan');
    else changeBenchPage((now) => ({ ...now, chosen: id }), 'the other basket of this plan');
  };
  return (
    <header className="bench-head">
      <a className="bench-back" href="#plan">
        ‹ Plan
      </a>
      <h1 className="bench-name">{plan.name}</h1>
      <label className="bench-record">
        <span className="unseen">Basket of this plan</span>
        <select value={record.id} onChange={({ target }) => choose(target.value)}>
          {page.records.map(({ id, name }) => (
            <option key={id} value={id}>
              {name}
            </option>
          ))}
          <option value="new">One more basket …</option>
        </select>
      </label>
      {!isKept && (
        <p className="bench-warning" role="status">
          This browser keeps nothing: leave the page open until the basket is done, or save the
          plan.
        </p>
      )}
      {isAwake && <span className="bench-awake soft">The screen stays awake.</span>}
    </header>
  );
}
