/** The door to zod's building blocks: a schema's leaf is a reader of text, so that a value is read, checked and typed at once. */
import { z } from 'zod';
import { allOf, type Fault, type Reader } from './read-value.js';
import { readListOf } from './read-words.js';

/** What an editor shows for a key. */
export interface Notes {
  readonly description: string;
  readonly examples: readonly [string, ...string[]];
  /** The values to choose from, where there are few. */
  readonly enum?: readonly string[];
}

type Text<Value> = z.ZodType<Value, string>;
type TextOrList<Value> = z.ZodType<readonly Value[], string | string[]>;

/** A fault travels through zod in an issue's `params`. */
function push(context: z.RefinementCtx, faults: readonly Fault[], input: unknown, path: PropertyKey[] = []): void {
  for (const fault of faults) context.issues.push({ code: 'custom', input, path, params: { fault } });
}

/** The fault in an issue that a leaf pushed. */
export function faultOf(issue: z.core.$ZodIssue): Fault | undefined {
  if (issue.code !== 'custom' || !issue.params || !('fault' in issue.params)) return undefined;
  return issue.params.fault as Fault;
}

export function leaf<Value>(reader: Reader<Value>, notes: Notes): Text<Value> {
  return z
    .string()
    .transform((text, context): Value => {
      const read = reader(text);
      if (read.ok) return read.value;
      push(context, read.faults, text);
      return z.NEVER;
    })
    .meta({ ...notes });
}

/** Entries in one line parted by commas, or a YAML list of such lines. */
export const listLeaf = <Value>(entry: Reader<Value>, notes: Notes): TextOrList<Value> =>
  entriesLeaf(readListOf(entry), notes);

/** As `listLeaf`, where a line is read by a reader of its own. */
export function entriesLeaf<Value>(line: Reader<readonly Value[]>, notes: Notes): TextOrList<Value> {
  return z
    .union([z.string(), z.array(z.string())])
    .transform((value, context): readonly Value[] => {
      const lines = typeof value === 'string' ? [value] : value;
      const reads = lines.map((text, index) => {
        const read = line(text);
        if (!read.ok) push(context, read.faults, text, typeof value === 'string' ? [] : [index]);
        return read;
      });
      const all = allOf(reads);
      return all.ok ? all.value.flat() : z.NEVER;
    })
    .meta({ ...notes });
}
