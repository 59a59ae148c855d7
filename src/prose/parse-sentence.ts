/** Inline tokens → a line of words with the places of its links. */
import type { Place } from '../model/place.js';
import { type Line, plainText, type Run } from '../model/prose.js';
import type { Sentence, SentenceLink, Unprinted } from './blocks.js';
import { joinRuns, trimLine } from './line.js';
import { type Span, spanOf, type Token } from './markdown.js';

/** Where the text of a block stands in its file. */
export interface Anchor {
  readonly place: Place;
  /** The place of a part of the block's text. */
  part(span: Span): Place;
}

const TAG = /<\/?[a-z][a-z0-9-]*(?:\s[^<>]*)?\/?>/i;

/** Adds what cannot be printed to `unprinted`. */
export function parseSentence(inline: Token, anchor: Anchor, unprinted: Unprinted[]): Sentence {
  const runs: Run[] = [];
  const links: { target: string; place: Place; from: number }[] = [];
  const finished: SentenceLink[] = [];
  let strong = 0;
  let emphasis = 0;
  const open: (typeof links)[number][] = [];
  const add = (text: string): void => {
    const link = open.at(-1);
    runs.push({
      text,
      ...(strong > 0 ? { strong: true as const } : {}),
      ...(emphasis > 0 ? { emphasis: true as const } : {}),
      ...(link ? { link: link.target } : {}),
    });
  };
  const placeOf = (token: Token): Place => {
    const span = spanOf(token);
    return span ? anchor.part(span) : anchor.place;
  };
  for (const token of inline.children ?? []) {
    if (token.type === 'text' || token.type === 'code_inline') {
      if (TAG.test(token.content)) unprinted.push({ what: 'tag', place: tagPlace(inline, token, anchor) });
      add(token.content);
    } else if (token.type === 'softbreak' || token.type === 'hardbreak') add(' ');
    else if (token.type === 'strong_open') strong += 1;
    else if (token.type === 'strong_close') strong -= 1;
    else if (token.type === 'em_open') emphasis += 1;
    else if (token.type === 'em_close') emphasis -= 1;
    else if (token.type === 'link_open') {
      open.push({ target: String(token.attrGet('href') ?? ''), place: placeOf(token), from: runs.length });
    } else if (token.type === 'link_close') {
      const link = open.pop();
      if (link) finished.push({ target: link.target, place: link.place, text: plainText(runs.slice(link.from)) });
    } else if (token.type === 'image') unprinted.push({ what: 'picture', place: placeOf(token) });
  }
  const line: Line = trimLine(joinRuns(runs));
  return { line, links: finished, place: anchor.place };
}

function tagPlace(inline: Token, token: Token, anchor: Anchor): Place {
  const tag = TAG.exec(token.content)?.[0] ?? '';
  const start = inline.content.indexOf(tag);
  return start === -1 ? anchor.place : anchor.part({ start, end: start + tag.length });
}
