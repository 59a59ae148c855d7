/** The partner's page: for two whose pages name each other, and fit to be read by anybody. */
import { describe, expect, test } from 'vitest';
import { gatherFiles } from '../../src/app/gather-files.js';
import { composeBooklet } from '../../src/booklet/compose-booklet.js';
import { readFolder } from '../../src/content/read-folder.js';
import type { Booklet, PartnerPart } from '../../src/model/booklet.js';
import { plainLine, plainText } from '../../src/model/prose.js';
import { everyShapeLibrary } from '../fixtures/every-shape-library.js';
import { everyShapePlan } from '../fixtures/every-shape-plan.js';
import { client as alone, library } from '../fixtures/library.js';
import { plan } from '../fixtures/plan.js';
import { planDemo } from '../studio/demo-plans.js';

const client = { ...alone, name: 'Rowan Ashby', partnerName: 'Nell' };
const partIn = ({ parts }: Booklet): PartnerPart =>
  parts.find((part): part is PartnerPart => part.kind === 'partner') ?? expect.fail('no page for the partner');
const demo = await planDemo();
const pairs = demo.clients.flatMap((one) => {
  const planned = demo.plans.get(one.id);
  if (one.partnerName === undefined || planned === undefined) return [];
  return [
    { client: one, plan: planned, part: partIn(composeBooklet({ library: demo.library, client: one, plan: planned })) },
  ];
});

describe('who has one', () => {
  test('two of the demo, who name each other; nobody else', () => {
    expect(pairs.map(({ client: { id, partnerName } }) => [id, partnerName])).toEqual([
      ['imre-fane', 'Nell'],
      ['nell-fane', 'Imre'],
    ]);
    const kinds = composeBooklet({ library, client: alone, plan }).parts.map(({ kind }) => kind);
    expect(kinds).not.toContain('partner');
  });

  test('one-sided naming is none, and neither is naming oneself', async () => {
    const named = async (partner: string) => {
      const { value: files } = await gatherFiles('content');
      const changed = files.map(({ path, bytes }) => {
        if (path !== 'clients/nell-fane/client.md') return { path, bytes };
        const text = new TextDecoder().decode(bytes).replace('partner: imre-fane', `partner: ${partner}`);
        return { path, bytes: new TextEncoder().encode(text) };
      });
      return readFolder(changed).value.clients.filter(({ partnerName }) => partnerName !== undefined);
    };
    expect(await named('imre-fane')).toHaveLength(2);
    expect(await named('rowan-ashby')).toEqual([]);
    expect(await named('nell-fane')).toEqual([]);
  });
});

describe('what it tells', () => {
  const part = partIn(composeBooklet({ library, client, plan }));

  test('of every exercise of each session once: what to count, to watch, to say, and when to stop', () => {
    expect(part.title).toContain('Nell');
    expect(part.sessions).toEqual([
      { title: expect.stringContaining('Squat and pull'), exercises: part.watched.map(({ exercise }) => exercise) },
    ]);
    expect(part.watched.map(({ exercise }) => exercise)).toEqual([
      'goblet-squat',
      'one-arm-row',
      'push-up',
      'box-squat',
    ]);
    const squat = part.watched[0] ?? expect.fail();
    expect(squat.count).toEqual(['Count the good reps aloud.']);
    expect(squat.watch.map(plainText)).toEqual(['Watch from the side.']);
    expect(squat.faults.map(({ see, say }) => [plainText(see), plainText(say)])).toContainEqual([
      'Heels lift',
      '‘Print the whole foot.’',
    ]);
    expect(squat.stop.map(plainText)).toContain('A sharp pain in the knee.');
    expect(part.watched[1]?.count).toEqual(['Count the good reps aloud.', 'Say which side is next.']);
  });

  test('clocks, ways and rounds by what is counted', () => {
    const shapes = partIn(composeBooklet({ library: everyShapeLibrary, client, plan: everyShapePlan(3) }));
    const countOf = (id: string) => shapes.watched.find(({ exercise }) => exercise === id)?.count;
    expect(countOf('side-plank')).toEqual([
      'Watch the clock. Say the last five seconds aloud.',
      'Say which side is next.',
    ]);
    expect(countOf('suitcase-carry')).toEqual([
      'Look ahead: is the way clear? Say when to turn.',
      'Say which side is next.',
    ]);
    expect(countOf('hip-opener')).toEqual(['Count the rounds aloud.']);
  });

  test('no hands, bells by the floor, the signs of alarm and the number', () => {
    const said = part.paragraphs.map(plainText).join(' ');
    expect(said).toMatch(/No hands-on help/);
    expect(said).toMatch(/Never hand to hand/);
    expect(part.emergency.length).toBeGreaterThan(5);
    expect(part.call).toContain(library.studio.emergencyNumber);
  });

  test('in the client’s language, in short sentences', () => {
    const nb = partIn(composeBooklet({ library, client: { ...client, language: 'nb' }, plan }));
    expect(nb.title).toBe('Til Nell: tell, se og si fra');
    for (const one of [part, nb]) {
      const own = [...one.paragraphs.map(plainText), ...one.watched.flatMap(({ count }) => count)];
      for (const sentence of own.flatMap((text) => text.split(/(?<=[.?!])\s/)))
        expect(sentence.split(/\s/).length, sentence).toBeLessThanOrEqual(12);
    }
  });
});

describe('it counts as public', () => {
  const minding = {
    ...client,
    cautions: client.cautions.map((caution) => ({ ...caution, words: 'SECRET caution' })),
    notes: [plainLine('SECRET note')],
    workOnThis: plainLine('SECRET work on this'),
  };

  test('nothing the coach wrote for the client, no load, no figure, no date, no family name', () => {
    for (const { text, name } of [
      { text: JSON.stringify(partIn(composeBooklet({ library, client: minding, plan }))), name: 'Ashby' },
      ...pairs.map((one) => ({ text: JSON.stringify(one.part), name: one.client.name.split(' ')[1] ?? expect.fail() })),
    ]) {
      expect(text).not.toContain('SECRET');
      expect(text).not.toContain(name);
      expect(text).not.toMatch(/\d\s?(kg|lb)\b|×|\b20\d\d\b/);
    }
  });

  test('it is the same whoever the client is, but for the name: health and figures change nothing in it', () => {
    const lighter = JSON.parse(JSON.stringify(plan).replaceAll('16 kg', '8 kg').replaceAll('"reps":9', '"reps":5'));
    const one = partIn(composeBooklet({ library, client: minding, plan: lighter }));
    expect(one).toEqual(partIn(composeBooklet({ library, client, plan })));
  });
});
