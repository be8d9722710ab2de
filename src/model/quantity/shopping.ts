/** What to buy for a class: one list for all its baskets. */
import { quantityWords } from '#words/quantities.ts';
import type { Unit } from '../../plan/schema.ts';
import type { Material, Quantities } from './quantities.ts';
import { yieldOf } from './yields.ts';

/** One line of the list. Lengths mm, weights g. */
export interface ShoppingLine {
  readonly material: Material;
  /** For all baskets, with waste. */
  readonly length: number;
  readonly grams: number;
  /** What it is sold by, and how much strand that is. */
  readonly unit: string;
  readonly perUnit: number;
  readonly buy: number;
  /** Left over when all baskets are made, the waste counted as lost. */
  readonly left: number;
  /** Where the figure for a unit comes from. */
  readonly source: string;
}

const coilGrams = { poundCoil: 453.59237, bundle: 500 } as const;
const hankLength = { hank: 304_800, halfHank: 152_400, caneCoil: 152_400 } as const;

const { sold, sources } = quantityWords;

/** Chair cane is sold up to 3.5 mm; wider is binder cane. */
const widestChairCane = 3.75;

/**
 * Materials of `baskets` baskets with the plan's share of waste, and how many coils or hanks that
 * is: each size rounded up once, for the whole class.
 *
 * @param waste share of all strand that is lost
 * @param unit reed is bought by the pound where the plan is in inches, else in 500 g bundles
 */
export function shoppingList(
  { materials }: Pick<Quantities, 'materials'>,
  baskets: number,
  waste: number,
  unit: Unit,
): ShoppingLine[] {
  if (!(Number.isInteger(baskets) && baskets >= 1)) {
    throw new RangeError(`baskets is ${baskets}, allowed a whole number from 1`);
  }
  return materials.map((material) => {
    const length = baskets * (1 + waste) * material.length;
    const sold = saleUnit(material, length, unit);
    const buy = Math.ceil(length / sold.perUnit - 1e-9);
    return {
      material,
      length,
      grams: baskets * (1 + waste) * material.grams,
      ...sold,
      buy,
      left: buy * sold.perUnit - length,
    };
  });
}

function saleUnit(
  { stock }: Material,
  length: number,
  unit: Unit,
): Pick<ShoppingLine, 'unit' | 'perUnit' | 'source'> {
  if (stock.section === 'cane') {
    const isChair = stock.width < widestChairCane;
    const hank = length <= hankLength.halfHank ? 'halfHank' : 'hank';
    const name = isChair ? hank : 'caneCoil';
    const source = isChair ? sources.published : sources.memory;
    return { unit: sold[name], perUnit: hankLength[name], source };
  }
  const name = unit === 'in' ? 'poundCoil' : 'bundle';
  const { lengthPerGram, source } = yieldOf(stock);
  return { unit: sold[name], perUnit: coilGrams[name] * lengthPerGram, source: sources[source] };
}
