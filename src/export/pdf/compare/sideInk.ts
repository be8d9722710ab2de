import type { LineMark } from '../page/mark.ts';

/** The first basket's line is whole, the second's dashed, so that a copy in grey tells them apart. */
export const sideInk: Readonly<Record<'a' | 'b', Pick<LineMark, 'stroke' | 'dash'>>> = {
  a: { stroke: '#1e5a78', dash: [] },
  b: { stroke: '#96285c', dash: [2, 1.4] },
};
