/** JSON Schemas of the front matter, from the same schemas that read it: editors complete and explain with them. */
import { z } from 'zod';
import { makeClientSchema } from './client-schema.js';
import { exerciseSchema } from './exercise-schema.js';
import { programmeSchema } from './programme-schema.js';
import { studioSchema } from './read-studio-file.js';

export type ReaderSchemaName = 'studio' | 'exercise' | 'programme' | 'client';

/** JSON Schema draft-07, the draft editors of YAML understand. */
export function readerSchemas(): Readonly<Record<ReaderSchemaName, Readonly<Record<string, unknown>>>> {
  return {
    studio: schemaOf(studioSchema, 'A studio'),
    exercise: schemaOf(exerciseSchema, 'An exercise'),
    programme: schemaOf(programmeSchema, 'A programme'),
    client: schemaOf(makeClientSchema({ unit: 'kg', mixed: false }), 'A client'),
  };
}

/** A YAML editor reads `8` as a number and `2027` as another: what is text here may be either there. */
const WRITTEN = ['string', 'number', 'boolean'];

function schemaOf(schema: z.ZodType, title: string): Readonly<Record<string, unknown>> {
  const made = z.toJSONSchema(schema, {
    target: 'draft-07',
    io: 'input',
    override: ({ jsonSchema }) => {
      if (jsonSchema.type === 'string') Object.assign(jsonSchema, { type: WRITTEN });
      // Words to choose from are offered, not required: they are read in any case, and in lists.
      if (Array.isArray(jsonSchema.enum)) {
        jsonSchema.examples = [...new Set([...(jsonSchema.examples ?? []), ...jsonSchema.enum.map(String)])];
        delete jsonSchema.enum;
      }
    },
  });
  return { ...made, title };
}
