import { presentComparison } from '../../keep/compareHere.ts';
import type { Side } from '../../keep/compareStudio.ts';

interface Props {
  readonly layout: 'beside' | 'over';
  readonly solid: Side;
}

/** Side by side, or one over the other, and then which is drawn as woven. */
export function LayoutButtons({ layout, solid }: Props) {
  const { lay, draw } = presentComparison();
  const choices = [
    {
      name: 'Side by side',
      means: 'Both as woven, turned together',
      isChosen: layout === 'beside',
      choose: () => lay('beside'),
    },
    {
      name: 'B over A',
      means: 'A as woven, with the outline of B laid over it',
      isChosen: layout === 'over' && solid === 'a',
      choose: () => {
        draw('a');
        lay('over');
      },
    },
    {
      name: 'A over B',
      means: 'B as woven, with the outline of A laid over it',
      isChosen: layout === 'over' && solid === 'b',
      choose: () => {
        draw('b');
        lay('over');
      },
    },
  ];
  return (
    <fieldset className="layout-buttons">
      <legend className="unseen">Lay the baskets</legend>
      {choices.map(({ name, means, isChosen, choose }) => (
        <button key={name} type="button" title={means} aria-pressed={isChosen} onClick={choose}>
          {name}
        </button>
      ))}
    </fieldset>
  );
}
