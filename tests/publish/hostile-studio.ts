/** A small studio with a text of somebody else's wherever a page lets a text stand. */
import { type FolderFile, readFolder } from '../../src/content/read-folder.js';
import { RULE_IDS } from '../../src/engine/rulebook.js';
import type { Problem } from '../../src/model/problem.js';
import type { Result } from '../../src/model/result.js';
import type { Content } from '../../src/model/studio.js';
import { smallStudio } from '../app/run-chalkleaf.js';

export interface Field {
  readonly path: string;
  readonly line: number;
  /** In UTF-16 units of the line. */
  readonly from: number;
  readonly to: number;
}

export type Pages = ReadonlyMap<string, string>;

const NOTES = '\n## Work on this\n\nBreathe before each set.\n\n## Notes\n\nCame back rested.\n';
const OBSERVED =
  '\n## Observations\n\n| Date | Exercise | Side | Seen |\n| --- | --- | --- | --- |\n| 2026-11-16 | [Goblet squat](../../exercises/goblet-squat.md) | | hurrying |\n';

const RULES = `| Rule | Value | Reason |
| --- | --- | --- |
| gain-novice | 50 | Beginners come once a week. |
`;
const PICTURE = 'exercises/goblet-squat.webp';
const POSES = `
## Poses

A squat from the side.

| Position | On | Feet | Trunk | Knees | Ankles | Hands | Kit |
| --- | --- | --- | --- | --- | --- | --- | --- |
| start | feet | apart 36 | upright | | | chest | bell in both hands |
| bottom | | | lean 33 | 125 | 29 | | |

![A bell held close.](goblet-squat.webp)
`;

/** More kinds of text than the smallest studio has, and so many exercises more. */
export function hostPages(exercises = 0): Pages {
  const pages = new Map(smallStudio());
  const add = (path: string, work: (text: string) => string): void => {
    pages.set(path, work(pages.get(path) ?? ''));
  };
  add('studio.md', (text) => `${text}\nA room with a door to the yard.\n`);
  add('clients/ash-venn/client.md', (text) => `${text}${OBSERVED}${NOTES}`);
  add('exercises/goblet-squat.md', (text) => text + POSES);
  add('rules.md', () => RULES);
  // What it begins with is all that is read of it here.
  add(PICTURE, () => 'RIFF    WEBP');
  add('programmes/first-six-weeks.md', (text) => text.replace('## A: Legs', 'Six weeks from nothing.\n\n## A: Legs'));
  const another = pages.get('exercises/chair-squat.md') ?? '';
  for (let n = 1; n <= exercises; n += 1) {
    pages.set(`exercises/chair-squat-${n}.md`, another.replace('Chair squat', `Chair squat ${n}`));
  }
  return pages;
}

const VALUE = [
  /^(?<before>[a-z][a-z -]*: +)(?<value>\S.*)$/,
  /^(?<before> *- )(?<value>\S.*)$/,
  /^(?<before>#+ )(?<value>\S.*)$/,
  /^(?<before>!\[)(?<value>[^\]]+)/,
];

/** Values of keys, items of lists, headings, cells, paragraphs, and what is said of pictures. */
export function fieldsOf(pages: Pages): readonly Field[] {
  const texts = [...pages].filter(([path]) => path.endsWith('.md'));
  return texts.flatMap(([path, text]) =>
    text.split('\n').flatMap((line, index): Field[] => {
      const at = (from: number, to: number): Field => ({ path, line: index, from, to });
      if (line === '' || line === '---' || /^\|[ -|]*$/.test(line)) return [];
      if (line.startsWith('|')) {
        const cells = [...line.matchAll(/\|([^|]+)(?=\|)/g)];
        return cells.map(({ index: start, 1: cell = '' }) => at(start + 2, start + 1 + cell.trimEnd().length));
      }
      for (const pattern of VALUE) {
        const found = pattern.exec(line)?.groups;
        const { before, value } = found ?? {};
        if (before !== undefined && value !== undefined) return [at(before.length, before.length + value.length)];
      }
      return [at(0, line.length)];
    }),
  );
}

/** `instead`: the text alone, else after what stands there. */
export function put(pages: Pages, { path, line, from, to }: Field, hostile: string, instead: boolean): Pages {
  const lines = (pages.get(path) ?? '').split('\n');
  const old = lines[line] ?? '';
  const value = instead ? hostile : `${old.slice(from, to)} ${hostile}`;
  lines[line] = old.slice(0, from) + value + old.slice(to);
  return new Map([...pages, [path, lines.join('\n')]]);
}

interface Offer {
  readonly field: Field;
  readonly hostile: string;
}

/** All of them at once. From the end, so that a field before it stays where it is. */
const withOffers = (pages: Pages, offers: readonly Offer[]): Pages =>
  [...offers]
    .sort((a, b) => b.field.line - a.field.line || b.field.from - a.field.from)
    .reduce((changed, { field, hostile }) => put(changed, field, hostile, false), pages);

/** Those that can stand together with nothing wrong: what is told of a line, or else of a page, is laid to the offers on it. */
function standing(pages: Pages, offers: readonly Offer[]): readonly Offer[] {
  const wrong = readPages(withOffers(pages, offers)).problems.filter(isWrong);
  if (wrong.length === 0) return offers;
  const lines = new Set(wrong.map(({ place }) => `${place?.file}:${(place?.line ?? 0) - 1}`));
  const files = new Set(wrong.map(({ place }) => place?.file));
  const off = offers.filter(({ field: { path, line } }) => !lines.has(`${path}:${line}`));
  const rest = off.length < offers.length ? off : offers.filter(({ field: { path } }) => !files.has(path));
  if (rest.length === offers.length) throw new Error('what is wrong is told of a page that nothing was put in');
  return standing(pages, rest);
}

const IS_PLAIN = /^(?:name|place|coach|for): /;

/** What a field holds: a name, which is shown as it is written; or prose, which is read as Markdown. */
const isPlain = (pages: Pages, { path, line }: Field): boolean =>
  IS_PLAIN.test((pages.get(path) ?? '').split('\n')[line] ?? '');

/** Which of the strings can be a name, and which can stand in prose: each tried on a page or a line of its own. */
function sorted(strings: readonly string[]): Readonly<Record<'plain' | 'prose', readonly string[]>> {
  const named = hostPages(strings.length);
  const prose = new Map(hostPages());
  const page = 'clients/ash-venn/client.md';
  prose.set(page, `${prose.get(page)}\n${strings.map(() => 'Rested.').join('\n\n')}\n`);
  const inOrder = (pages: Pages, are: (field: Field) => boolean): readonly string[] => {
    const fields = fieldsOf(pages).filter(are).slice(-strings.length);
    const offers = fields.map((field, index): Offer => ({ field, hostile: strings[index] ?? '' }));
    return standing(pages, offers).map(({ hostile }) => hostile);
  };
  return {
    plain: inOrder(named, (field) => isPlain(named, field) && field.path.includes('exercises/')),
    prose: inOrder(prose, ({ path }) => path === page),
  };
}

/** Letters that a name has room for, beside its own. */
const ROOM = 100;

/** Two together where a name has room for both. */
function inPairs(strings: readonly string[]): readonly string[] {
  const pairs: string[] = [];
  for (let at = 0; at < strings.length; at += 1) {
    const one = strings[at] ?? '';
    const both = `${one} ${strings[at + 1] ?? ''}`;
    if (both.length <= ROOM) at += 1;
    pairs.push(both.length <= ROOM ? both : one);
  }
  return pairs;
}

export interface Filled {
  readonly pages: Pages;
  /** What was put in, field by field. */
  readonly strings: readonly string[];
}

/** Studios in whose fields the strings stand with nothing wrong: every one of them that can be a name or stand in prose. */
export function fillStudios(strings: readonly string[], studios: number): readonly Filled[] {
  const { plain, prose } = sorted(strings);
  const pairs = inPairs(plain);
  const pages = hostPages(Math.ceil(pairs.length / studios));
  const open = standing(
    pages,
    fieldsOf(pages).map((field): Offer => ({ field, hostile: 'plainly' })),
  ).map(({ field }) => field);
  let [nextPair, nextProse] = [0, 0];
  return Array.from({ length: studios }, (): Filled => {
    const offers = open.map((field): Offer => {
      const from = isPlain(pages, field) ? pairs[nextPair++ % pairs.length] : prose[nextProse++ % prose.length];
      return { field, hostile: from ?? '' };
    });
    const stand = standing(pages, offers);
    return { pages: withOffers(pages, stand), strings: stand.map(({ hostile }) => hostile) };
  });
}

export function readPages(pages: Pages): Result<Content> {
  const files = [...pages].map(([path, text]): FolderFile => ({ path, bytes: new TextEncoder().encode(text) }));
  return readFolder(files, { rules: RULE_IDS });
}

export const isWrong = ({ severity }: Problem): boolean => severity === 'error';
