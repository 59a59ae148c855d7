/** In which order the format names its keys: a key added stands where a coach would look for it. */
import { z } from 'zod';
import { makeClientSchema } from '../client-schema.js';

const schema = makeClientSchema({ unit: 'kg', mixed: false });

/** The keys below a path; none where the format has none there. Indices of lists are left out of the path. */
export function keyOrder(path: readonly string[]): readonly string[] {
  let shape = shapeOf(schema);
  for (const step of path) shape = shapeOf(shape[step]);
  return Object.keys(shape);
}

function shapeOf(type: unknown): Readonly<Record<string, unknown>> {
  if (type instanceof z.ZodOptional) return shapeOf(type.unwrap());
  if (type instanceof z.ZodArray) return shapeOf(type.element);
  return type instanceof z.ZodObject ? type.shape : {};
}
