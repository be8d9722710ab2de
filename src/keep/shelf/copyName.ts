import { limits } from '../../plan/limits.ts';

/** A name for a copy of `name` that none of `taken` is: `Trug, copy`, then `Trug, copy 2`. */
export function nameOfCopy(name: string, taken: readonly string[]): string {
  const stem = name.replace(/, copy(?: \d+)?$/, '');
  const names = new Set(taken);
  for (let number = 1; ; number += 1) {
    const ending = number === 1 ? ', copy' : `, copy ${number}`;
    const copy = `${stem.slice(0, limits.name.most - ending.length)}${ending}`;
    if (!names.has(copy)) return copy;
  }
}
