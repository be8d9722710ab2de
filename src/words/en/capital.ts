import { language } from './language.ts';

/** `text` with its first letter as at the beginning of a sentence; for words of this folder. */
export function capital(text: string): string {
  return text.charAt(0).toLocaleUpperCase(language) + text.slice(1);
}
