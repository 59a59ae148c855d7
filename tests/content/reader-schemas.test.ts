/** The schemas editors complete with: valid JSON Schema, and of one mind with the reader about the demo. */
import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { Ajv } from 'ajv';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { type ReaderSchemaName, readerSchemas } from '../../src/content/reader-schemas.js';

const CONTENT = resolve(import.meta.dirname, '..', '..', 'content');
const schemas = readerSchemas();
const ajv = new Ajv({ strict: true, allowUnionTypes: true });

const frontMatter = (path: string): unknown =>
  parse(readFileSync(join(CONTENT, path), 'utf8').split(/^---$/m)[1] ?? '', { schema: 'core' });

const pages: readonly (readonly [ReaderSchemaName, string])[] = [
  ['studio', 'studio.md'],
  ...readdirSync(join(CONTENT, 'exercises')).map((name) => ['exercise', `exercises/${name}`] as const),
  ...readdirSync(join(CONTENT, 'programmes')).map((name) => ['programme', `programmes/${name}`] as const),
  ...readdirSync(join(CONTENT, 'clients')).map((name) => ['client', `clients/${name}/client.md`] as const),
];

describe('reader schemas', () => {
  test.each(Object.entries(schemas))('%s is JSON Schema, and forbids keys it does not have', (_, schema) => {
    expect(ajv.validateSchema(schema)).toBe(true);
    expect(schema.additionalProperties).toBe(false);
  });

  test.each(pages)('%s: %s of the demo fits', (name, path) => {
    const validate = ajv.compile({ ...schemas[name] });
    validate(frontMatter(path));
    expect(validate.errors ?? []).toEqual([]);
  });

  test('a misspelt key does not fit', () => {
    const validate = ajv.compile({ ...schemas.studio });
    expect(validate({ ...Object(frontMatter('studio.md')), nmae: 'x' })).toBe(false);
  });

  test('every key of the reader explains itself', () => {
    const silent: string[] = [];
    const look = (at: string, part: unknown): void => {
      if (typeof part !== 'object' || part === null) return;
      for (const [key, value] of Object.entries(part)) {
        if (key === 'properties' && typeof value === 'object' && value !== null) {
          for (const [name, schema] of Object.entries(value)) {
            if (typeof schema !== 'object' || schema === null || !('description' in schema))
              silent.push(`${at}.${name}`);
          }
        }
        look(`${at}.${key}`, value);
      }
    };
    look('', schemas);
    expect(silent).toEqual([]);
  });
});
