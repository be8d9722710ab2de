/** How much a basket holds, in the measures of the trade. */

/** A US dry quart is 67.200625 cubic inches (NIST Handbook 44, Appendix C); in mm³. */
const dryQuart = 67.200625 * 25.4 ** 3;

const litre = 1e6;

/** Capacity in mm³ as US dry quarts, to a quarter above 2 and to two decimals below. */
export function usDryQuarts(capacity: number): string {
  const quarts = capacity / dryQuart;
  if (!Number.isFinite(quarts)) return '–';
  return quarts < 2 ? quarts.toFixed(2) : `${Math.round(quarts * 4) / 4}`;
}

/** Capacity in mm³ as litres, to one decimal above 2 and to two below. */
export function litres(capacity: number): string {
  const volume = capacity / litre;
  if (!Number.isFinite(volume)) return '–';
  return volume.toFixed(volume < 2 ? 2 : 1);
}
