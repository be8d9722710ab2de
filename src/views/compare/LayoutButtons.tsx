import { compareWords } from '#words/compare.ts';
import { presentComparison } from '../../keep/compareHere.ts';
import type { Side } from '../../keep/compareStudio.ts';

const words = compareWords.layouts;

interface Props {
  readonly layout: 'beside' | 'over';
  readonly solid: Side;
}

/** Side by side, or one over the other, and then which is drawn as woven. */
export function LayoutButtons({ layout, solid }: Props) {
  const { lay, draw } = presentComparison();
  const choices = [
    {
      ...words.beside,
      isChosen: layout === 'beside',
      choose: () => lay('beside'),
    },
    {
      ...words.bOverA,
      isChosen: layout === 'over' && solid === 'a',
      choose: () => {
        draw('a');
        lay('over');
      },
    },
    {
      ...words.aOverB,
      isChosen: layout === 'over' && solid === 'b',
      choose: () => {
        draw('b');
        lay('over');
      },
    },
  ];
  return (
    <fieldset className="layout-buttons">
      <legend className="unseen">{words.title}</legend>
      {choices.map(({ name, means, isChosen, choose }) => (
        <button key={name} type="button" title={means} aria-pressed={isChosen} onClick={choose}>
          {name}
        </button>
      ))}
    </fieldset>
  );
}
