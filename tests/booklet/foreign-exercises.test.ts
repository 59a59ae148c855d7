/**
 * A booklet in another language than its exercises: the author's lines and names say theirs, on screen and on paper, and
 * nothing of the first language is left outside them.
 */
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { renderToString } from 'preact-render-to-string';
import { beforeAll, describe, expect, test } from 'vitest';
import { BookBody } from '../../layouts/book/book.js';
import { bookOf } from '../../layouts/book/leaves.js';
import { composeBooklet } from '../../src/booklet/compose-booklet.js';
import type { Booklet } from '../../src/model/booklet.js';
import { clientId } from '../../src/model/identity.js';
import { invariant } from '../../src/model/result.js';
import { drawBooklet } from '../../src/print/draw-booklet.js';
import { speechOf } from '../../src/words/speech.js';
import { planDemo } from '../studio/demo-plans.js';
import { longestSentence } from '../words/ban-list.js';
import { tellBooklet } from './tell-booklet.js';

const ID = 'sunniva-lund';
let booklet: Booklet;
let english: Booklet;
let names: readonly string[];
beforeAll(async () => {
  const { clients, plans, library } = await planDemo();
  const client = clients.find(({ id }) => id === ID);
  const plan = plans.get(ID);
  invariant(client !== undefined && plan !== undefined, `${ID} is planned`);
  booklet = composeBooklet({ library, client, plan });
  english = composeBooklet({ library, client: { ...client, language: 'en-GB' }, plan });
  const ways = library.exercises.flatMap(({ words }) =>
    words.easier.map(({ say }) => say.map(({ text }) => text).join('')),
  );
  names = [
    ...library.exercises.map(({ name }) => name),
    ...library.programmes.flatMap(({ name, sessions }) => [name, ...sessions.map((session) => session.name)]),
    ...ways,
    library.studio.name,
    client.name,
  ];
});

const html = (of: Booklet): string => renderToString(BookBody({ book: bookOf(of, speechOf(of.language).words) }));

/** Words that a sentence in English hardly does without, and none in Norwegian. */
const ENGLISH = /\b(the|and|your|you|of|with|each|is|it|this|not|week|weeks|sets?|rest|leave|day)\b/giu;

describe('on screen', () => {
  test('an author’s lines say their language', () => {
    const own = [...html(booklet).matchAll(/<bdi lang="en-GB">(.*?)<\/bdi>/g)].map(([, text]) => text ?? '');
    expect(own.length).toBeGreaterThan(200);
    expect(own).toContain('Goblet squat');
    expect(own).toContain('Sit between your heels, as if on to a low stool.');
    expect(own.join(' ')).not.toMatch(/[æøå]/iu);
  });

  test('nothing else is in it', () => {
    // Names inside a sentence of the booklet's own stand as they are.
    const called = [...names]
      .sort((a, b) => b.length - a.length)
      .flatMap((name) => [name, name.split(', ')[0] ?? name, name.replace(', ', ' (')]);
    let rest = html(booklet)
      .replace(/<bdi lang="en-GB">.*?<\/bdi>/g, ' ')
      .replace(/<[^>]*>/g, ' ')
      .replaceAll('&nbsp;', ' ');
    for (const name of called) rest = rest.replaceAll(new RegExp(name.replace(/[()]/g, '\\$&'), 'giu'), ' ');
    expect(rest.length).toBeGreaterThan(20_000);
    expect(rest.match(ENGLISH) ?? []).toEqual([]);
    expect(html(english).match(ENGLISH)?.length).toBeGreaterThan(1000);
  });

  test('in the booklet’s own language nothing is marked', () => {
    expect(english.exerciseLanguage).toBeUndefined();
    expect(JSON.stringify(english)).not.toContain('"lang"');
    expect(html(english)).not.toContain('<bdi');
  });
});

test('every client of the demo could be spoken to so', async () => {
  const { clients, plans, library } = await planDemo();
  const told = clients.flatMap((client) => {
    const plan = plans.get(client.id);
    return plan === undefined ? [] : [composeBooklet({ library, client: { ...client, language: 'nb' }, plan })];
  });
  expect(told.length).toBeGreaterThan(10);
  for (const of of told) {
    expect(tellBooklet(of)).not.toMatch(/undefined|NaN|\[object|\.\.(?!\.)| [.,;]\s/);
    const cells = of.parts.flatMap((part) => (part.kind === 'session' ? part.rows.flatMap((row) => row.cells) : []));
    expect(cells.length).toBeGreaterThan(20);
    for (const { effort, how, tempo, trial = '', gate, why } of cells) {
      for (const text of [effort, ...how, tempo, trial, gate?.needs ?? '', gate?.otherwise ?? '', ...why])
        expect(longestSentence(text), text).toBeLessThanOrEqual(12);
    }
  }
});

interface Element {
  readonly role: string;
  readonly lang?: string;
  readonly children: readonly (Element | { readonly type: string; readonly id: string })[];
}
const languagesIn = ({ lang, children }: Element): readonly string[] => [
  ...(lang === undefined ? [] : [lang]),
  ...children.flatMap((child) => ('role' in child ? languagesIn(child) : [])),
];

test('on paper the document says one language, and the elements of an author’s lines another', async () => {
  const { value } = await drawBooklet(booklet, clientId(ID));
  invariant(value !== null, 'it can be printed');
  const document = await getDocument({ data: new Uint8Array(value), verbosity: 0 }).promise;
  const { info } = await document.getMetadata();
  expect(info).toMatchObject({ Language: 'nb' });
  const languages = new Map<string, number>();
  for (let number = 1; number <= document.numPages; number += 1) {
    const tree: Element = await (await document.getPage(number)).getStructTree();
    for (const lang of languagesIn(tree)) languages.set(lang, (languages.get(lang) ?? 0) + 1);
  }
  await document.destroy();
  expect([...languages.keys()]).toEqual(['en-GB']);
  expect(languages.get('en-GB')).toBeGreaterThan(150);
});
