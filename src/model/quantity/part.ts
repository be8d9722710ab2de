/** A piece to cut, and what is woven from the coil. Lengths mm, weights g. */

/** Reed by its section; `cane` is the bark in strips, for lashing and wrapping. */
export type Section = 'flat' | 'flat-oval' | 'half-round' | 'round' | 'cane';

/** What a strand is bought as. */
export interface Stock {
  readonly section: Section;
  readonly width: number;
  readonly thickness: number;
  readonly colour: string;
}

/** Pieces of one length. */
export interface Part {
  readonly part: string;
  /** What it is called in the list to buy, together with its like; left out where it has no like. */
  readonly use?: string;
  readonly count: number;
  /** Length that the shape takes, and the length to cut: rounded up to the plan's step. */
  readonly needed: number;
  readonly length: number;
  readonly stock: Stock;
}
