/** The order in which poppler reads the file’s structure is the order in which the booklet says things. */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { composeBooklet } from '../../src/booklet/compose-booklet.js';
import type { Booklet, Part, SessionPart } from '../../src/model/booklet.js';
import { clientId } from '../../src/model/identity.js';
import { plainText } from '../../src/model/prose.js';
import { drawBooklet } from '../../src/print/draw-booklet.js';
import { sayPlan } from '../../src/words/say-plan.js';
import { fixtureBooklet, longNamesBooklet } from '../fixtures/booklet.js';
import { planDemo } from '../studio/demo-plans.js';

const folder = mkdtempSync(join(tmpdir(), 'order-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Apart from where lines end, and from signs that show nothing. */
const bare = (text: string): string => text.normalize('NFC').replace(/[\s\u00ad\u200b-\u200f\u2060-\u206f]+/g, '');

function sessionTexts(part: SessionPart): readonly string[] {
  return [
    part.title,
    part.minutes,
    part.safety,
    ...part.warmUp.map(({ name, text }) => (name === '' ? text : name)),
    ...part.weeks.map(({ dateText }) => dateText),
    ...part.rows.flatMap((row) => [row.name, ...row.cells.map(({ version, stack }) => version + stack.join(''))]),
    ...part.coolDown.map(({ name, text }) => (name === '' ? text : name)),
  ];
}

/** What a part says, in the order of the tree; an exercise’s sections are told apart, since paper puts stop signs early. */
function textsOf(part: Part): readonly string[] {
  switch (part.kind) {
    case 'cover':
      return [
        part.title,
        part.client,
        part.programme,
        part.dates,
        part.studio,
        part.coach,
        part.edition,
        part.notMedical,
      ];
    case 'how-to':
      return [part.title, ...part.paragraphs.map(plainText), ...part.key.map(({ text }) => text)];
    case 'safety':
      return [
        part.title,
        part.emergencyTitle,
        ...part.emergency.map(plainText),
        part.call,
        part.painTitle,
        ...part.pain.flatMap(({ degree, text }) => [degree, text]),
        ...part.paragraphs.map(plainText),
      ];
    case 'calendar':
      return [
        part.title,
        ...part.notes.map(plainText),
        ...part.weeks.flatMap(({ label, sessions }) => [label, ...sessions.map(({ dateText }) => dateText)]),
      ];
    case 'session':
      return sessionTexts(part);
    case 'exercise':
      return [
        part.title,
        ...part.description.map(plainText),
        ...part.sections
          .filter(({ name }) => ['set-up', 'pick up', 'cues', 'breath', 'put down', 'faults'].includes(name))
          .flatMap(({ title, lines }) => [
            title,
            ...lines.flatMap(({ lead, text }) => [plainText(lead), plainText(text)]),
          ]),
        part.stopTitle,
        ...part.stop.map(plainText),
      ];
    case 'partner':
      return [part.title, ...part.paragraphs.map(plainText), part.emergencyTitle, ...part.emergency.map(plainText)];
    case 'record':
      return [part.title, ...part.paragraphs.map(plainText)];
  }
}

/** Poppler's structure, its text alone, in its order. */
function readInOrder(bytes: Uint8Array): string {
  const path = join(folder, 'booklet.pdf');
  writeFileSync(path, bytes);
  const said = execFileSync('pdfinfo', ['-struct-text', path], { encoding: 'utf8', maxBuffer: 1 << 26 });
  return bare([...said.matchAll(/^ *"(.*)"$/gm)].map(([, text = '']) => text).join(''));
}

/** The texts that do not stand behind the one before them. */
function outOfOrder(booklet: Booklet, read: string): readonly string[] {
  let from = 0;
  return booklet.parts.flatMap(textsOf).flatMap((text) => {
    const said = bare(text);
    const at = read.indexOf(said, from);
    if (at < 0) return [text];
    from = at + said.length;
    return [];
  });
}

const demo = await planDemo();
const demoBooklets = demo.clients.flatMap((client): readonly (readonly [string, Booklet])[] => {
  const plan = demo.plans.get(client.id);
  if (!plan || !['rowan-ashby', 'sunniva-lund', 'torben-slade'].includes(client.id)) return [];
  return [
    [client.name, composeBooklet({ library: demo.library, client, plan: sayPlan(plan, demo.library.studio.language) })],
  ];
});

test.each([
  ['an ordinary booklet', fixtureBooklet],
  ['words that are hard to fit', longNamesBooklet],
  ...demoBooklets,
] as const)('%s', async (_, booklet) => {
  const { value } = await drawBooklet(booklet, clientId('rowan-ashby'));
  const read = readInOrder(value ?? new Uint8Array());
  expect(outOfOrder(booklet, read)).toEqual([]);
  expect(booklet.parts.flatMap(textsOf).length).toBeGreaterThan(100);
});

test('two cues exchanged would be found', async () => {
  const { value } = await drawBooklet(fixtureBooklet, clientId('rowan-ashby'));
  let turns = 0;
  const turned = fixtureBooklet.parts.map((part) => {
    if (part.kind !== 'exercise' || turns > 0) return part;
    const sections = part.sections.map((section) => {
      if (section.name !== 'cues') return section;
      const [one, other, ...others] = section.lines;
      if (!one || !other) return section;
      turns += 1;
      return { ...section, lines: [other, one, ...others] };
    });
    return { ...part, sections };
  });
  expect(turns).toBe(1);
  expect(outOfOrder({ ...fixtureBooklet, parts: turned }, readInOrder(value ?? new Uint8Array()))).not.toEqual([]);
});
