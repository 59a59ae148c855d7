/** Holds front matter against a schema, and says what does not fit where it stands. */
import { z } from 'zod';
import type { Place } from '../model/place.js';
import { placeIn, type SourceText } from '../prose/source-text.js';
import { nearestOf } from './nearest.js';
import type { Finding } from './read-value.js';
import type { Report } from './report.js';
import { faultOf } from './schema-parts.js';
import { entryOf, type KeysNode, nodeAt, type Path, plainOf, type TextNode } from './yaml-tree.js';

/** What the schema made of the keys; `undefined` where something did not fit. */
export function applySchema<Schema extends z.ZodType>(
  schema: Schema,
  tree: KeysNode,
  source: SourceText,
  report: Report,
): z.output<Schema> | undefined {
  const result = schema.safeParse(plainOf(tree));
  if (result.success) return result.data;
  const { issues } = result.error;
  const misspelt = new Set(issues.flatMap((issue) => likelyMeant(issue, schema)));
  for (const issue of issues) {
    // A key that stands there misspelt is not missing as well.
    if (!misspelt.has(issue.path.join('/'))) complain(issue, schema, tree, source, report);
  }
  return undefined;
}

function complain(
  issue: z.core.$ZodIssue,
  schema: z.ZodType,
  tree: KeysNode,
  source: SourceText,
  report: Report,
): void {
  const { path } = issue;
  const fault = faultOf(issue);
  if (fault) {
    const node = nodeAt(tree, path);
    const place =
      node?.kind === 'text' ? placeInText(source, node, fault.start, fault.length) : placeAt(tree, path, source);
    report.add(fault.finding, place);
  } else if (issue.code === 'unrecognized_keys') {
    const known = keysOf(schemaAt(schema, path));
    const holder = path.length === 0 ? tree : nodeAt(tree, path);
    for (const key of issue.keys) {
      const entry = holder?.kind === 'keys' ? entryOf(holder, key) : undefined;
      const place = entry ? placeIn(source, entry.keyAt.start, entry.keyAt.end) : placeAt(tree, path, source);
      report.add({ code: 'unknown-key', data: { key, nearest: nearestOf(key, known) } }, place);
    }
  } else if (nodeAt(tree, path) === undefined) {
    const key = String(path.at(-1) ?? '');
    report.add(
      { code: 'missing-key', data: { key, example: exampleOf(schemaAt(schema, path)) } },
      placeAt(tree, path, source),
    );
  } else {
    report.add(
      { code: 'wrong-shape', data: { key: keyOf(path), wanted: wantedBy(issue) } },
      placeAt(tree, path, source),
    );
  }
}

/** The paths that misspelt keys are likely to mean. */
function likelyMeant(issue: z.core.$ZodIssue, schema: z.ZodType): readonly string[] {
  if (issue.code !== 'unrecognized_keys') return [];
  const known = keysOf(schemaAt(schema, issue.path));
  const meant = issue.keys.map((key) => nearestOf(key, known)).filter((key) => key !== '');
  return meant.map((key) => [...issue.path, key].join('/'));
}

/** A part of a value, or the whole where the value does not stand in the file letter for letter. */
export function placeInText(source: SourceText, node: TextNode, start: number, length: number): Place {
  if (node.letters === undefined) return placeIn(source, node.start, node.end);
  return placeIn(source, node.letters + start, node.letters + start + length);
}

/** Where a path leads: the value; else its key; else the key that should hold it, or the top. */
export function placeAt(tree: KeysNode, path: Path, source: SourceText): Place {
  const node = path.length === 0 ? undefined : nodeAt(tree, path);
  if (node) return placeIn(source, node.start, node.end);
  const entry = keyEntryAt(tree, path);
  if (entry) return placeIn(source, entry.keyAt.start, entry.keyAt.end);
  const above = path.slice(0, -1);
  if (above.length === 0) return placeIn(source, 0, 3);
  const holder = keyEntryAt(tree, above);
  if (holder) return placeIn(source, holder.keyAt.start, holder.keyAt.end);
  const item = nodeAt(tree, above);
  return item ? placeIn(source, item.start, item.end) : placeAt(tree, above, source);
}

/** The key itself, as written. */
export function placeOfKey(tree: KeysNode, path: Path, source: SourceText): Place {
  const entry = keyEntryAt(tree, path);
  return entry ? placeIn(source, entry.keyAt.start, entry.keyAt.end) : placeAt(tree, path, source);
}

function keyEntryAt(tree: KeysNode, path: Path): KeysNode['entries'][number] | undefined {
  const last = path.at(-1);
  const holder = path.length === 1 ? tree : nodeAt(tree, path.slice(0, -1));
  return last !== undefined && holder?.kind === 'keys' ? entryOf(holder, last) : undefined;
}

/** The last step of a path that is a name: `cautions` for the second caution. */
const keyOf = (path: Path): string => String(path.findLast((step) => typeof step === 'string') ?? '');

type Shape = Extract<Finding, { code: 'wrong-shape' }>['data']['wanted'];

function wantedBy(issue: z.core.$ZodIssue): Shape {
  if (issue.code === 'invalid_union') return 'list';
  if (issue.code !== 'invalid_type') return 'text';
  return issue.expected === 'array' ? 'entries' : issue.expected === 'object' ? 'keys' : 'text';
}

/** The part of a schema that judges what stands at a path. */
function schemaAt(schema: unknown, path: Path): unknown {
  let part = bare(schema);
  for (const step of path) {
    if (part instanceof z.ZodObject) part = bare(part.shape[String(step)]);
    else if (part instanceof z.ZodArray) part = bare(part.element);
    else return undefined;
  }
  return part;
}

const bare = (schema: unknown): unknown => (schema instanceof z.ZodOptional ? bare(schema.unwrap()) : schema);

const keysOf = (schema: unknown): readonly string[] => (schema instanceof z.ZodObject ? Object.keys(schema.shape) : []);

function exampleOf(schema: unknown): string {
  const notes = schema instanceof z.ZodType ? schema.meta() : undefined;
  const examples: unknown = notes?.examples;
  return Array.isArray(examples) ? String(examples[0] ?? '') : '';
}
