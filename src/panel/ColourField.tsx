import { useId, useState } from 'react';
import { panelWords } from '#words/panel.ts';
import { colourName } from '../form/colourName.ts';
import { FieldFrame } from '../form/FieldFrame.tsx';
import { dyeNames, strandCss } from '../plan/dyes.ts';
import type { ColourControl } from './control.ts';

const { own, mix } = panelWords.colour;

/** A dye by its name, or a colour of one's own. */
export function ColourField(props: Omit<ColourControl, 'kind'>) {
  const { label, colour, onCommit } = props;
  const id = useId();
  const [problem, setProblem] = useState<string | null>(null);
  const isOwn = colour.startsWith('#');
  const names = isOwn || dyeNames.includes(colour) ? dyeNames : [colour, ...dyeNames];
  const shown = strandCss(colour);
  const choose = (name: string) => setProblem(onCommit(name === own ? shown : name, false));
  return (
    <FieldFrame id={id} label={label} problem={problem}>
      {isOwn ? (
        <input
          className="panel-colour"
          type="color"
          aria-label={mix(label)}
          value={colour}
          onChange={(event) => setProblem(onCommit(event.target.value, true))}
        />
      ) : (
        <span className="panel-swatch" style={{ background: shown }} />
      )}
      <select
        id={id}
        className="field-input"
        value={isOwn ? own : colour}
        onChange={(event) => choose(event.target.value)}
      >
        {names.map((name) => (
          <option key={name} value={name}>
            {colourName(name)}
          </option>
        ))}
        <option value={own}>{own}</option>
      </select>
    </FieldFrame>
  );
}
