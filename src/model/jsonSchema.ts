import * as z from 'zod/mini';
import { designSchema } from './design.ts';
import { currentVersion } from './migrations/migrate.ts';

/** JSON Schema (draft 2020-12) of the design file, made from the schema that the program itself reads by. */
export function designJsonSchema(): Record<string, unknown> {
  const { $schema, ...rest } = z.toJSONSchema(designSchema, { target: 'draft-2020-12' });
  return {
    $schema,
    title: `Throughfin design, version ${currentVersion}`,
    description:
      'One fan box: SI units throughout, each key carries its unit after the underscore. "usual" is the range that is common in the trade; "minimum" and "maximum" are the bounds.',
    ...rest,
  };
}

export function designJsonSchemaText(): string {
  return `${JSON.stringify(designJsonSchema(), null, 2)}\n`;
}
