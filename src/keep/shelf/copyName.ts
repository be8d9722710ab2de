import { keepingWords } from '#words/keeping.ts';
import { limits } from '../../plan/limits.ts';

/** A name for a copy of `name` that none of `taken` is: `Trug, copy`, then `Trug, copy 2`. */
export function nameOfCopy(name: string, taken: readonly string[]): string {
  const stem = name.replace(keepingWords.anyCopy, '');
  const names = new Set(taken);
  for (let number = 1; ; number += 1) {
    const ending = keepingWords.copy(number);
    const copy = `${stem.slice(0, limits.name.most - ending.length)}${ending}`;
    if (!names.has(copy)) return copy;
  }
}
