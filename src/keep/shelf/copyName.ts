import { keepingWords } from '#words/keeping.ts';
import { limits } from '../../plan/limits.ts';

/** A name for a copy of `name` that none of `taken` is: `Trug, copy`, then `Trug, copy 2`. */
export function nameOfCopy(name: string, taken: readonly string[]): string {
  const stem = withoutEnding(name);
  const names = new Set(taken);
  for (let number = 1; ; number += 1) {
    const ending = keepingWords.copy(number);
    const copy = `${stem.slice(0, limits.name.most - ending.length)}${ending}`;
    if (!names.has(copy)) return copy;
  }
}

/** More copies of one plan than this are taken for plans of their own. */
const mostCopies = 99;

/** What `name` is a copy of, or itself. */
function withoutEnding(name: string): string {
  const endings = Array.from({ length: mostCopies }, (_, at) => keepingWords.copy(at + 1));
  const ending = endings.find((one) => name.endsWith(one)) ?? '';
  return name.slice(0, name.length - ending.length);
}
