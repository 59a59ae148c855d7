/** A page's body in sections, each with the lines it takes: what a change of a section stands on. */
import { plainText } from '../../model/prose.js';
import type { Block } from '../../prose/blocks.js';
import { parseFences } from '../../prose/front-matter.js';
import { parseTokens } from '../../prose/markdown.js';
import { parseBody } from '../../prose/parse-body.js';
import { lineText, type SourceText } from '../../prose/source-text.js';
import { sameName } from '../sections.js';

/** In the order a page has them. */
const SECTIONS = ['Signed off', 'Tests', 'Observations', 'Work on this', 'Notes'] as const;
export type SectionName = (typeof SECTIONS)[number];

/** Lines count from 1. */
export interface PagePart {
  /** As the format has it; absent for what stands under a heading it does not know. */
  readonly name?: SectionName;
  readonly heading: string;
  readonly level: number;
  readonly line: number;
  /** The line under which the section's content may begin: of an underlined heading its underline. */
  readonly headEnd: number;
  /** The last line with anything in it. */
  readonly end: number;
  readonly blocks: readonly PartBlock[];
}

export interface PartBlock {
  readonly block: Block;
  readonly line: number;
  /** Its last line. */
  readonly end: number;
}

export interface PageParts {
  /** The last line before the body: the fence below the front matter. */
  readonly before: number;
  readonly parts: readonly PagePart[];
  /** Lines with anything in them after `before` and before the first heading. */
  readonly introEnd: number;
}

export function partsOf(source: SourceText): PageParts {
  const fences = parseFences(source);
  const bodyLine = typeof fences === 'string' ? 1 : fences.bodyLine;
  const bodyStart = source.lineStarts[bodyLine - 1];
  const before = bodyLine - 1;
  if (bodyStart === undefined) return { before, parts: [], introEnd: before };
  const tokens = parseTokens(source.text.slice(bodyStart)).filter(({ level, map }) => level === 0 && map !== null);
  const ends = new Map(tokens.map(({ map }) => [(map?.[0] ?? 0) + bodyLine, (map?.[1] ?? 0) + before]));
  const lastLine = (first: number, until: number): number => {
    let line = until;
    while (line > first && lineText(source, line).trim() === '') line -= 1;
    return line;
  };
  const blocks = parseBody(source, bodyLine).blocks;
  const headings = blocks.flatMap((block) => (block.kind === 'heading' ? [block] : []));
  const seen = new Set<string>();
  const parts = headings.map((block, index): PagePart => {
    const { line } = block.place;
    const next = headings[index + 1]?.place.line ?? source.lineStarts.length + 1;
    const heading = plainText(block.words.line);
    const name = SECTIONS.find((one) => sameName(one) === sameName(heading) && !seen.has(one));
    if (name) seen.add(name);
    const own = blocks.filter((one) => one.kind !== 'heading' && one.place.line > line && one.place.line < next);
    return {
      ...(name ? { name } : {}),
      heading,
      level: block.level,
      line,
      headEnd: ends.get(line) ?? line,
      end: lastLine(line, next - 1),
      blocks: own.map((one) => ({
        block: one,
        line: one.place.line,
        end: lastLine(one.place.line, ends.get(one.place.line) ?? one.place.line),
      })),
    };
  });
  const first = headings[0]?.place.line ?? source.lineStarts.length + 1;
  return { before, parts, introEnd: lastLine(before, first - 1) };
}

export const partNamed = ({ parts }: PageParts, name: SectionName): PagePart | undefined =>
  parts.find((part) => part.name === name);

/** Under which line a section begins that is not there yet: after those the format names before it, before the others. */
export function placeForNew(
  { parts, before, introEnd }: PageParts,
  name: SectionName,
): { readonly after: number; readonly level: number } {
  const rank = (part: PagePart): number => (part.name ? SECTIONS.indexOf(part.name) : -1);
  const own = SECTIONS.indexOf(name);
  const known = parts.filter((part) => part.name !== undefined);
  const [previous] = known.filter((part) => rank(part) < own).sort((a, b) => rank(b) - rank(a));
  if (previous) return { after: previous.end, level: previous.level };
  const [next] = known.filter((part) => rank(part) > own).sort((a, b) => rank(a) - rank(b));
  if (!next) return { after: parts.at(-1)?.end ?? Math.max(before, introEnd), level: parts.at(-1)?.level ?? 2 };
  const above = parts[parts.indexOf(next) - 1];
  return { after: above?.end ?? Math.max(before, introEnd), level: next.level };
}
