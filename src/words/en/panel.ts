import type { Handle, OddEnd, Plan } from '../../plan/schema.ts';
import { capital } from './capital.ts';

type Base = Plan['base']['kind'];

/** The plan panel: its sections and what is said of each in few words, and what fits no section. */
export const panelWords = {
  base: {
    title: 'Base',
    gist: (kind: string, size: string) => `${kind}, ${size}`,
    /** In one word, for the gist. */
    kinds: {
      mat: 'mat',
      wheel: 'wheel',
      oval: 'oval',
      board: 'board',
    } satisfies Readonly<Record<Base, string>>,
    across: (length: string) => `${length} across`,
  },
  corners: { title: 'Corners' },
  oddEnd: {
    title: 'Odd end',
    gist: (ends: number) => `${ends} ends`,
    kind: { label: 'Odd end', act: 'the odd end' },
    /** What an odd end is called on each base. */
    kinds: {
      mat: { split: 'one stake split', added: 'one end added', none: 'none' },
      oval: { split: 'one stake split', added: 'one end added', none: 'none' },
      wheel: { split: 'one spoke split', added: 'half a spoke added', none: 'none' },
      board: { split: 'one stake split', added: 'one stake added', none: 'none' },
    } satisfies Readonly<Record<Base, Readonly<Record<OddEnd['kind'], string>>>>,
    place: { label: 'Where it stands', act: 'the place of the odd end' },
  },
  bands: { title: 'Bands', gist: (rows: number) => `${rows} rows` },
  set: {
    title: 'Set',
    gist: (share: string) => `${share} of the bend stays`,
    stakes: { label: 'Stake set', act: 'the stake set' },
  },
  handle: {
    title: 'Handle',
    /** In one word, for the gist. */
    kinds: {
      none: 'none',
      swing: 'swing',
      fixed: 'fixed',
    } satisfies Readonly<Record<Handle['kind'], string>>,
  },
  units: {
    title: 'Units',
    act: 'the unit',
    names: {
      in: 'inches, to 1/16',
      cm: 'centimetres',
      mm: 'millimetres',
    } satisfies Readonly<Record<Plan['display']['unit'], string>>,
  },
  hold: 'Hold the girth points where they are when the base or the rows change',
  colour: {
    own: 'my own colour',
    mix: (label: string) => `${label}: mix`,
  },
  /** Why a plan cannot be; both as in `refusalWords`. */
  refused: (allowed: string, found: string) => `${capital(allowed)}; found ${found}`,
  refusedWhole: 'This cannot be woven as a plan.',
};
