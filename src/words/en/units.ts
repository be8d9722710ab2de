import type { Unit } from '../../plan/schema.ts';

/** Units as they are written and typed, and what is wrong with a typed length. */
export const unitWords = {
  length: { in: 'in', cm: 'cm', mm: 'mm' } satisfies Record<Unit, string>,
  names: { in: 'inches', cm: 'centimetres', mm: 'millimetres' } satisfies Record<Unit, string>,
  feet: 'ft',
  metres: 'm',
  dryQuarts: 'dry qt',
  litres: 'l',
  degrees: 'degrees',
  number: 'number',
  /** Of a length too short to be shown; `least` is the shortest that is. */
  lessThan: (least: string) => `less than ${least}`,

  /** What is understood behind a typed length besides `length`, ″ and `in`, `cm`, `mm`; in lower case. */
  spellings: {
    in: ['in.', 'inch', 'inches'],
    cm: [],
    mm: [],
  } satisfies Record<Unit, readonly string[]>,

  typed: {
    nothing: 'Type a length, such as 3 1/2, 3.5 in or 89 mm.',
    negative: (typed: string) => `“${typed}”: the length cannot be negative.`,
    otherUnit: (typed: string) => `“${typed}”: the unit is in, ", cm or mm, or none at all.`,
    comma: (typed: string) =>
      `“${typed}”: the comma can be read two ways; leave it out or use a point.`,
    noNumber: (typed: string) => `“${typed}”: not a number, such as 3 1/2 or 3.5.`,
    tooLong: (typed: string, metres: string) => `“${typed}”: longer than ${metres} m.`,
  },
};
