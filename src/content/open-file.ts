/** One file of the folder, opened: its text, its front matter as a tree, its body as blocks, its links. Meaning comes later. */
import type { z } from 'zod';
import type { Place } from '../model/place.js';
import { type Line, plainText } from '../model/prose.js';
import type { Body, Sentence, SentenceLink } from '../prose/blocks.js';
import { parseFences } from '../prose/front-matter.js';
import { parseBody } from '../prose/parse-body.js';
import { parseBytes, parseText, placeIn, type SourceText } from '../prose/source-text.js';
import { applySchema, placeAt, placeInText, placeOfKey } from './apply-schema.js';
import { idIn, resolveTarget } from './link-target.js';
import { type Fault, type Read, type Reader, readPart, splitPart } from './read-value.js';
import type { Report } from './report.js';
import { type KeysNode, nodeAt, type Path, parseFrontMatter } from './yaml-tree.js';

export interface OpenFile {
  readonly path: string;
  readonly source: SourceText;
  readonly report: Report;
  /** Absent where the front matter cannot be read. */
  readonly keys: KeysNode | undefined;
  readonly body: Body;
  /** The first line. */
  readonly place: Place;
}

const MEGABYTE = 1024 * 1024;

/** Files larger than this are not read: no page of a studio is so long. */
const LONGEST_FILE_BYTES = 2 * MEGABYTE;

/** `frontMatter` is `none` for a file whose facts all stand in its body. */
export function openFile(
  path: string,
  bytes: Uint8Array,
  report: Report,
  frontMatter: 'needed' | 'none' = 'needed',
): OpenFile {
  if (bytes.length > LONGEST_FILE_BYTES) {
    const source = parseText(path, '');
    const place = placeIn(source, 0, 1);
    const [megabytes, mostMegabytes] = [Math.ceil(bytes.length / MEGABYTE), LONGEST_FILE_BYTES / MEGABYTE];
    report.add({ code: 'file-too-large', data: { path, megabytes, mostMegabytes } }, place);
    return { path, source, report, keys: undefined, body: { blocks: [], unprinted: [] }, place };
  }
  const { source, faults } = parseBytes(path, bytes);
  for (const fault of faults) {
    if (fault.kind === 'not-utf-8') report.add({ code: fault.kind, data: { byte: fault.byte } }, fault.place);
    else report.add({ code: fault.kind, data: { character: fault.character } }, fault.place);
  }
  const place = placeIn(source, 0, 1);
  const nothing = { path, source, report, keys: undefined, body: { blocks: [], unprinted: [] }, place };
  // Bytes that are no text would only give more of the same.
  if (faults.length > 0) return nothing;
  const fences = parseFences(source);
  if (typeof fences === 'string') {
    if (fences === 'no-front-matter' && frontMatter === 'none') {
      return finish({ ...nothing, body: parseBody(source, 1) });
    }
    report.add({ code: fences, data: {} }, placeIn(source, 0, 3));
    return nothing;
  }
  const keys = parseFrontMatter(source, fences.start, fences.end, (finding, at) => report.add(finding, at));
  return finish({ ...nothing, keys, body: parseBody(source, fences.bodyLine) });
}

function finish(file: OpenFile): OpenFile {
  for (const { what, place } of file.body.unprinted) file.report.add({ code: 'not-printed', data: { what } }, place);
  let heading = '';
  const blocks = file.body.blocks.filter((block) => {
    if (block.kind === 'heading') heading = plainText(block.words.line).trim().toLowerCase();
    if (block.kind !== 'picture' || isPictureHome(file.path, heading)) return true;
    file.report.add({ code: 'not-printed', data: { what: 'picture' } }, block.place);
    return false;
  });
  return { ...file, body: { ...file.body, blocks } };
}

/** Where a picture stands for the drawing of an exercise; anywhere else none is printed. */
const isPictureHome = (path: string, heading: string): boolean =>
  idIn('exercises', path) !== undefined && heading === 'poses';

/** The front matter as a schema reads it. */
export function readKeys<Schema extends z.ZodType>(file: OpenFile, schema: Schema): z.output<Schema> | undefined {
  return file.keys && applySchema(schema, file.keys, file.source, file.report);
}

/** Where the value at a path stands, or what should hold it. */
export const placeOf = (file: OpenFile, ...path: Path): Place =>
  file.keys ? placeAt(file.keys, path, file.source) : file.place;

export const placeOfName = (file: OpenFile, ...path: Path): Place =>
  file.keys ? placeOfKey(file.keys, path, file.source) : file.place;

/** The entry at an index of a list, where that can be told; else the whole list. */
export function placeOfEntry(file: OpenFile, path: Path, index: number): Place {
  const node = file.keys && nodeAt(file.keys, path);
  if (node?.kind === 'list') return placeOf(file, ...path, index);
  const part = node?.kind === 'text' ? splitPart({ text: node.text, start: 0 }, /[,;]/g)[index] : undefined;
  return node?.kind === 'text' && part
    ? placeInText(file.source, node, part.start, part.text.length)
    : placeOf(file, ...path);
}

/** Reads text that stands at a place letter for letter; complains where it cannot. */
export function readAt<Value>(file: OpenFile, text: string, place: Place, reader: Reader<Value>): Value | undefined {
  const read: Read<Value> = readPart({ text, start: 0 }, reader);
  if (read.ok) return read.value;
  for (const fault of read.faults) file.report.add(fault.finding, within(place, text, fault));
  return undefined;
}

function within(place: Place, text: string, { start, length }: Fault): Place {
  const before = Array.from(text.slice(0, start)).length;
  const letters = Array.from(text.slice(start, start + length)).length;
  const most = Math.max(1, place.length - before);
  return { ...place, column: place.column + before, length: Math.max(1, Math.min(letters, most)) };
}

/** A sentence's words, with its links to other files as paths below the content folder. */
export function lineOf(file: OpenFile, { line }: Pick<Sentence, 'line'>): Line {
  return line.map((run) => {
    if (run.link === undefined) return run;
    const target = resolveTarget(file.path, run.link);
    return target.kind === 'file' ? { ...run, link: target.path } : run;
  });
}

/** Every link of the body. */
export function linksOf(file: OpenFile): readonly SentenceLink[] {
  return file.body.blocks.flatMap((block) => {
    if (block.kind === 'picture') return [];
    if (block.kind === 'list') return block.items.flatMap((item) => item.links);
    if (block.kind !== 'table') return block.words.links;
    return [block.head, ...block.rows.map((row) => row.cells)].flatMap((cells) => cells.flatMap((cell) => cell.links));
  });
}
