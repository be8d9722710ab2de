import { demos } from '../plan/demo/demos.ts';
import type { Plan } from '../plan/schema.ts';

interface Props {
  readonly onOpen: (plan: Plan) => void;
}

/** The baskets of the orchard class, to start from. */
export function DemoChooser({ onOpen }: Props) {
  return (
    <label className="head-field">
      <span className="unseen">Start from a basket of the orchard class</span>
      <select
        value=""
        onChange={({ target }) => {
          const chosen = demos.find(({ id }) => id === target.value);
          if (chosen) onOpen(chosen.plan);
        }}
      >
        <option value="" disabled>
          Start from …
        </option>
        {demos.map(({ id, title }) => (
          <option key={id} value={id}>
            {title}
          </option>
        ))}
      </select>
    </label>
  );
}
