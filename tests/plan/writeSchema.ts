/** Writes `docs/design-file.schema.json` from the schema in the code: `npm run docs:schema`. */
import { writeFileSync } from 'node:fs';
import { jsonSchemaText } from '../../src/plan/jsonSchema.ts';

writeFileSync(new URL('../../docs/design-file.schema.json', import.meta.url), jsonSchemaText());
