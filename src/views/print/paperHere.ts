import type { Paper } from '../../export/pdf/page/paper.ts';

/**
 * Where US Letter lies in the printer: Unicode CLDR 48.2, supplemental data, `paperSize`. The rest of
 * the world has A4.
 */
const letterTerritories: ReadonlySet<string> = new Set([
  ...['BZ', 'CA', 'CL', 'CO', 'CR', 'GT', 'MX', 'NI', 'PA', 'PH', 'PR', 'SV', 'US', 'VE'],
]);

/**
 * The paper usual where a person of these languages is, as `navigator.languages` tells them: by the
 * first that names a territory, else by where the first language is mostly spoken; A4 for none.
 */
export function paperOf(languages: readonly string[]): Paper {
  const locales = languages.flatMap((language) => {
    try {
      return [new Intl.Locale(language)];
    } catch {
      return [];
    }
  });
  const territory =
    locales.find(({ region }) => region !== undefined)?.region ?? locales[0]?.maximize().region;
  return territory !== undefined && letterTerritories.has(territory) ? 'letter' : 'a4';
}

/** The paper usual where this browser is. */
export function paperHere(): Paper {
  return paperOf(navigator.languages);
}
