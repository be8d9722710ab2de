import { expect, test } from 'vitest';
import { dyeNames, strandColour, strandCss } from '../../src/plan/dyes.ts';

test('a dye is found by its name however it is written', () => {
  expect(strandColour(' Indigo ')).toEqual([62, 80, 130]);
  expect(strandCss('indigo')).toBe('#3e5082');
});

test('a colour of its own is taken as it is', () => {
  expect(strandColour('#336699')).toEqual([51, 102, 153]);
  expect(strandCss('#336699')).toBe('#336699');
});

test('a name that nobody knows is left undyed, like one of an object of JavaScript', () => {
  for (const name of ['straw', 'constructor', '#12']) {
    expect(strandColour(name)).toEqual(strandColour('natural'));
  }
});

test('undyed strand is offered first', () => {
  expect(dyeNames[0]).toBe('natural');
});
