import { renderToStaticMarkup } from 'react-dom/server';
import { expect, test } from 'vitest';
import { ControlBody } from '../../src/panel/ControlBody.tsx';
import type { Control } from '../../src/panel/control.ts';
import { PlanPanel } from '../../src/panel/PlanPanel.tsx';
import { demos } from '../../src/plan/demo/demos.ts';

const onCommit = () => null;
const controls: readonly Control[] = [
  { kind: 'length', label: 'Gap', mm: 9.525, unit: 'in', least: 0, most: 200, onCommit },
  { kind: 'count', label: 'Rows', count: 20, least: 1, most: 300, onCommit },
  {
    kind: 'choice',
    label: 'Weave',
    value: 'twill',
    choices: [{ value: 'twill', text: 'twill' }],
    onCommit,
  },
  { kind: 'share', label: 'Packing', share: 1.05, least: 0.8, most: 1.6, onCommit },
  { kind: 'colour', label: 'Colour', colour: 'straw', onCommit },
];

test('every control is a native input with a label of its own', () => {
  for (const control of controls) {
    const markup = renderToStaticMarkup(<ControlBody control={control} />);
    const id = /<label[^>]* for="([^"]+)"/.exec(markup)?.[1];
    expect(markup).toMatch(new RegExp(`<(input|select) id="${id}"`));
  }
});

test('a length is shown as a maker reads it', () => {
  const [length] = controls;
  if (!length) throw new Error('a length expected');
  expect(renderToStaticMarkup(<ControlBody control={length} />)).toContain('value="3/8 in"');
});

test('a colour that is no known dye stays among the choices', () => {
  const colour = controls.at(-1);
  if (!colour) throw new Error('a colour expected');
  expect(renderToStaticMarkup(<ControlBody control={colour} />)).toContain('<option value="straw"');
});

test('every section of the panel is a button that says whether it is open', () => {
  const markup = renderToStaticMarkup(
    <PlanPanel plan={demos[0].plan} onChange={() => undefined} />,
  );
  for (const title of ['Base', 'Corners', 'Odd end', 'Bands', 'Set', 'Handle', 'Units']) {
    expect(markup).toMatch(
      new RegExp(
        `<button type="button" aria-expanded="(true|false)"[^>]*>.*?<span>${title}</span>`,
      ),
    );
  }
});

test('only a mat has corners to turn', () => {
  const titles = (id: string) => {
    const plan = demos.find((demo) => demo.id === id)?.plan ?? demos[0].plan;
    const markup = renderToStaticMarkup(<PlanPanel plan={plan} onChange={() => undefined} />);
    return [...markup.matchAll(/<span>([^<]+)<\/span><small>/g)].map(([, title]) => title);
  };
  expect(titles('orchard-trug')).toContain('Corners');
  expect(titles('plum-bowl')).not.toContain('Corners');
  expect(titles('loaf-basket')).not.toContain('Corners');
});
