import { expect, test } from 'vitest';
import { strayTexts } from '../../.config/text.mjs';

const found = (source: string) => strayTexts('src/views/Thing.tsx', source).length;

test('text is found wherever a person would read it', () => {
  expect(found('export const told = "The plan was not opened";')).toBe(1);
  expect(found('export const told = (n: number) => `row $' + '{n} of the wall`;')).toBe(2);
  expect(found('export const title = "Rows";')).toBe(1);
  expect(found('export const One = () => <p>rows</p>;')).toBe(1);
  expect(found('export const One = () => <button aria-label="undo" />;')).toBe(1);
  expect(found('export const One = () => <button title={isOld ? "undo" : told} />;')).toBe(1);
});

test('the key of a unit is found where it would be read', () => {
  const words = 'import { rowWords } from "#words/row.ts"; const { table } = rowWords;';
  expect(found(`${words} export const told = (unit: Unit) => table.caption(unit);`)).toBe(1);
  expect(found(`${words} export const told = (unit: Unit) => rowWords.head(3, unit);`)).toBe(1);
  expect(found('export const One = ({ unit }) => <span>{unit}</span>;')).toBe(1);
  expect(found('export const told = (mm: number, unit: Unit) => `$' + '{mm} $' + '{unit}`;')).toBe(
    1,
  );
  expect(found(`${words} export const told = (unit: Unit) => table.caption(signs[unit]);`)).toBe(0);
  expect(found('export const One = ({ unit }) => <Length unit={unit} />;')).toBe(0);
  expect(found('export const told = (mm: number, unit: Unit) => lengthText(mm, unit);')).toBe(0);
});

test('what is written for the machine is no text', () => {
  expect(found('import { one } from "./One two.ts";')).toBe(0);
  expect(found('export const One = () => <p className="soft wide" id="a b" />;')).toBe(0);
  expect(found('export type Kind = "a mat" | "a wheel";')).toBe(0);
  expect(found('export const isEnter = (key: string) => key === "Enter";')).toBe(0);
  expect(found('export const kind = "oddEnd";')).toBe(0);
  expect(found('throw new RangeError("no such row");')).toBe(0);
});

test('an exception that is no longer needed is told', () => {
  expect(strayTexts('src/scene/Eye.tsx', 'export const eye = 1;')).toEqual([
    expect.stringContaining('no longer holds'),
  ]);
});
