/** Writes `docs/agreement.md` from a run over all published patterns: `npm run docs:agreement`. */
import { writeFileSync } from 'node:fs';
import { agreementText } from './agreement.ts';
import { publishedPatterns } from './publishedPatterns.ts';

const file = new URL('../../../docs/agreement.md', import.meta.url);
writeFileSync(file, agreementText(publishedPatterns()));
