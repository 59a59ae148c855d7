/** The Markdown body of a file → a tree of blocks with places. What the blocks mean is left to `content`. */
import type { Place } from '../model/place.js';
import type { Block, Body, PictureBlock, Sentence, Unprinted } from './blocks.js';
import { parseTokens, spanOf, type Token } from './markdown.js';
import { type Anchor, parseSentence } from './parse-sentence.js';
import { parseTable } from './parse-table.js';
import { endOfLine, lineText, placeIn, type SourceText } from './source-text.js';

const UNPRINTED: Readonly<Record<string, Unprinted['what']>> = { fence: 'code', code_block: 'code', hr: 'line' };

/** The blocks from 1-based `bodyLine` to the end of the file. */
export function parseBody(source: SourceText, bodyLine: number): Body {
  const bodyStart = source.lineStarts[bodyLine - 1];
  if (bodyStart === undefined) return { blocks: [], unprinted: [] };
  const tokens = parseTokens(source.text.slice(bodyStart));
  const blocks: Block[] = [];
  const unprinted: Unprinted[] = [];
  const lineOf = (line: number): number => line + bodyLine;
  const sentence = (inline: Token): Sentence => parseSentence(inline, anchorOf(source, inline, lineOf), unprinted);
  const picture = (inline: Token): PictureBlock | undefined => pictureIn(inline, anchorOf(source, inline, lineOf));
  const paragraph = (inline: Token, place: Place): Block => ({ kind: 'paragraph', words: sentence(inline), place });
  for (let at = 0; at < tokens.length; at += 1) {
    const token = tokens[at];
    if (token === undefined) continue;
    const end = closing(tokens, at);
    const line = lineOf(token.map?.[0] ?? 0);
    const place = placeIn(source, source.lineStarts[line - 1] ?? 0, endOfLine(source, line));
    const inside = tokens.slice(at + 1, end);
    const what = UNPRINTED[token.type];
    if (what) unprinted.push({ what, place });
    else if (token.type === 'blockquote_open') unprinted.push({ what: 'quotation', place });
    else if (token.type === 'heading_open') {
      for (const inline of inside) {
        if (inline.type === 'inline') {
          blocks.push({ kind: 'heading', level: Number(token.tag.slice(1)), words: sentence(inline), place });
        }
      }
    } else if (token.type === 'paragraph_open') {
      for (const inline of inside) {
        if (inline.type === 'inline') blocks.push(picture(inline) ?? paragraph(inline, place));
      }
    } else if (token.type === 'bullet_list_open' || token.type === 'ordered_list_open') {
      blocks.push({ kind: 'list', items: parseItems(inside, sentence), place });
    } else if (token.type === 'table_open') blocks.push(parseTable(source, inside, line, lineOf, unprinted));
    at = Math.max(at, end);
  }
  return { blocks, unprinted };
}

/** A paragraph that is one picture and nothing else. */
function pictureIn(inline: Token, anchor: Anchor): PictureBlock | undefined {
  const [only, ...others] = inline.children ?? [];
  if (only?.type !== 'image' || others.length > 0) return undefined;
  const span = spanOf(only);
  const said = (only.children ?? []).map(({ type, content }) => (type === 'softbreak' ? ' ' : content)).join('');
  return {
    kind: 'picture',
    target: String(only.attrGet('src') ?? ''),
    said: said.trim(),
    place: span ? anchor.part(span) : anchor.place,
  };
}

/** Items of a list in the order written; items of a list within it follow the one they stand in. */
function parseItems(tokens: readonly Token[], sentence: (inline: Token) => Sentence): readonly Sentence[] {
  return tokens.filter((token) => token.type === 'inline' && token.map !== null).map(sentence);
}

/** The index of the token that closes the one at `open`; itself where it opens nothing. */
function closing(tokens: readonly Token[], open: number): number {
  const type = tokens[open]?.type ?? '';
  if (!type.endsWith('_open')) return open;
  const close = type.replace(/_open$/, '_close');
  let depth = 0;
  for (let at = open; at < tokens.length; at += 1) {
    if (tokens[at]?.type === type) depth += 1;
    else if (tokens[at]?.type === close) {
      depth -= 1;
      if (depth === 0) return at;
    }
  }
  return tokens.length - 1;
}

/** A block's text is its lines, each without its indent and mark: every line of it is the end of a line of the file. */
function anchorOf(source: SourceText, inline: Token, lineOf: (line: number) => number): Anchor {
  const first = lineOf(inline.map?.[0] ?? 0);
  const lines = inline.content.split('\n');
  const starts: { readonly at: number; readonly offset: number }[] = [];
  let at = 0;
  lines.forEach((text, index) => {
    starts.push({ at, offset: offsetOf(source, first + index, text) });
    at += text.length + 1;
  });
  const offset = (unit: number): number => {
    const line = starts.findLast((start) => start.at <= unit) ?? { at: 0, offset: 0 };
    return line.offset + unit - line.at;
  };
  const firstLength = lines[0]?.length ?? 0;
  return {
    place: placeIn(source, offset(0), offset(0) + firstLength),
    part: ({ start, end }) => placeIn(source, offset(start), Math.max(offset(start) + 1, offset(end))),
  };
}

function offsetOf(source: SourceText, line: number, text: string): number {
  const raw = lineText(source, line).trimEnd();
  const start = source.lineStarts[line - 1] ?? 0;
  const wanted = text.trimEnd();
  if (raw.endsWith(wanted)) return start + raw.length - wanted.length;
  // A heading closed by hashes.
  return start + (/^\s*#+\s*/.exec(raw)?.[0].length ?? 0);
}
