/** The JSON Schema of the design document, for editors and for programs that are not ours. */
import { z } from 'zod';
import { documentWords } from '#words/document.ts';
import { planSchema } from './schema.ts';

/**
 * The text of `docs/design-file.schema.json`. It says everything a JSON Schema can; the rules that
 * join several keys (`checkWhole.ts`) are told in `docs/design-file.md`.
 */
export function jsonSchemaText(): string {
  const { $schema, ...schema } = z.toJSONSchema(planSchema, { io: 'input' });
  const { title } = documentWords;
  return `${JSON.stringify({ $schema, title, ...schema }, null, 2)}\n`;
}
