import { readFileSync, writeFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { designJsonSchema, designJsonSchemaText } from '../../../src/model/jsonSchema.ts';

const published = new URL('../../../public/throughfin-design.schema.json', import.meta.url);

describe('the published JSON Schema', () => {
  test('is the one that the program reads by; refresh it with UPDATE=1 npx vitest run tests/unit/model/jsonSchema.test.ts', () => {
    if (process.env.UPDATE === '1') writeFileSync(published, designJsonSchemaText());
    expect(readFileSync(published, 'utf8')).toBe(designJsonSchemaText());
  });

  test('carries bounds, words and usual range of an input, and takes no unknown names', () => {
    expect(designJsonSchema()).toMatchObject({
      $schema: 'https://json-schema.org/draft/2020-12/schema',
      additionalProperties: false,
      title: 'Throughfin design, version 5',
      properties: {
        version: { const: 5 },
        sink: {
          additionalProperties: false,
          required: expect.arrayContaining(['length_m', 'finCount']),
          properties: {
            length_m: {
              type: 'number',
              minimum: 0.002,
              maximum: 0.5,
              title: 'Fin length',
              usual: [0.008, 0.1],
            },
            finCount: { type: 'integer', minimum: 2, maximum: 200 },
          },
        },
      },
    });
  });
});
