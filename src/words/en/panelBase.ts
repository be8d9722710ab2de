import type { Base, BoardBase, CornerKind } from '../../plan/schema.ts';

/** Controls of the base in the plan panel: each has a label, and an `act` that can be undone. */
export const baseWords = {
  kind: { label: 'Kind of base', act: 'the kind of base' },
  kinds: {
    mat: 'mat of stakes',
    wheel: 'wheel of spokes',
    oval: 'oval, rounded ends',
    board: 'board with a slot',
  } satisfies Readonly<Record<Base['kind'], string>>,
  upsett: { label: 'Upsett', act: 'the upsett' },
  upsetts: {
    rolled: 'rolled',
    creased: 'creased',
  } satisfies Readonly<Record<Base['upsett'], string>>,
  centreLift: { label: 'Centre lift', act: 'the centre lift' },
  lengthwise: { label: 'Lengthwise stakes', act: 'the count of lengthwise stakes' },
  crosswise: { label: 'Crosswise stakes', act: 'the count of crosswise stakes' },
  gap: { label: 'Gap', act: 'the gap' },
  mat: {
    gapKind: { label: 'Gaps', act: 'the kind of gaps' },
    gapKinds: { one: 'same both ways', two: 'one for each way' },
    gapLengthwise: { label: 'Lengthwise gap', act: 'the lengthwise gap' },
    gapCrosswise: { label: 'Crosswise gap', act: 'the crosswise gap' },
    fillers: {
      lengthwise: { label: 'Lengthwise fillers', act: 'the lengthwise fillers' },
      crosswise: { label: 'Crosswise fillers', act: 'the crosswise fillers' },
    },
  },
  corners: {
    kind: { label: 'Corners', act: 'the kind of corners' },
    kinds: {
      pinned: 'pinned',
      square: 'square',
      fanned: 'fanned',
    } satisfies Readonly<Record<CornerKind, string>>,
    hold: { label: 'Corner hold', act: 'the corner hold' },
    holdRows: { label: 'Hold ends at row', act: 'the rows of corner hold' },
    rows: { pinned: 'Rows pinned', fanned: 'Rows laid flat', act: 'the rows of the corners' },
  },
  oval: {
    border: { label: 'Border woven flat', act: 'the border' },
    fanned: { label: 'Ends fanned at a corner', act: 'the fanned ends' },
  },
  wheel: {
    spokes: { label: 'Spokes', act: 'the count of spokes' },
    diameter: { label: 'Across the base', act: 'the width of the base' },
    hub: { label: 'Across the hub', act: 'the hub' },
    laidIn: { label: 'Ends laid in partway', act: 'the ends laid in' },
    laidInAt: { label: 'Laid in, across', act: 'where ends are laid in' },
  },
  board: {
    shape: { label: 'Shape of the board', act: 'the shape of the board' },
    shapes: {
      round: 'round',
      rectangle: 'rectangle',
    } satisfies Readonly<Record<BoardBase['shape'], string>>,
    across: { label: 'Across', act: 'the across of the board' },
    length: { label: 'Length', act: 'the length of the board' },
    width: { label: 'Width', act: 'the width of the board' },
    ends: { label: 'Stakes in the slot', act: 'the count of stakes' },
    thickness: { label: 'Board thickness', act: 'the board thickness of the board' },
    slot: { label: 'Slot depth', act: 'the slot depth of the board' },
  },
};
