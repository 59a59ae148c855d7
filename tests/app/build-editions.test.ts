/** Build with issued editions: what was issued is drawn again as it was, and what changed since stands beside it. */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test, vi } from 'vitest';
import { rowId } from '../../src/model/identity.js';
import { doAsPlanned, markId } from '../session/make-marks.js';
import { CLIENT, type EditionStudio, editionStudio, wordsOf } from './edition-studio.js';
import { bytesBelow, writeFiles } from './run-chalkleaf.js';

// A coach's week of commands in one test: each is a process of its own.
vi.setConfig({ testTimeout: 300_000 });

/** Its first edition issued once by the program: each case works on a copy. */
let once: EditionStudio;
beforeAll(() => {
  once = editionStudio();
  expect(once.run('2026-12-28', 'issue', 'ash-venn').code).toBe(0);
});
afterAll(() => once.away());

let studio: EditionStudio;
beforeEach(() => {
  studio = editionStudio(once);
});
afterEach(() => studio.away());

const SQUAT = 'exercises/goblet-squat.md';
const DRAFTS = ['draft-a5.pdf', 'draft-plan.json', 'draft.html'];
const drafts = () => DRAFTS.filter((file) => existsSync(studio.out(file)));
const issued = () => bytesBelow(studio.out()).filter(([path]) => !DRAFTS.includes(path));
const told = (out: string) => out.replace(/\s+/g, ' ');
const build = (today: string) => {
  const ran = studio.run(today, 'build');
  expect(ran.code, ran.out).toBe(0);
  return told(ran.out);
};

test('without an edition, what is planned today is drawn, as a draft that is not issued', () => {
  studio.away();
  studio = editionStudio();
  const said = build('2026-12-28');
  expect(wordsOf(studio.out('booklet.html'))).toContain('Draft, not issued');
  expect(drafts()).toEqual([]);
  expect(said).not.toContain('edition');
});

describe('an issued edition', () => {
  test('is drawn letter for letter, whatever has since become of a cue, a test or the day', () => {
    expect(build('2026-12-28')).not.toContain('draft');
    const before = issued();
    expect(drafts()).toEqual([]);
    expect(wordsOf(studio.out('booklet.html'))).toContain('Edition 1');
    expect(JSON.parse(readFileSync(studio.out('plan.json'), 'utf8'))).toEqual(studio.edition(1).plan);

    studio.rewrite(SQUAT, 'as if on to a low stool', 'as if on to a milking stool');
    expect(build('2026-12-30')).toContain('edition 1 stands; what changed since is not in it.');
    expect(issued()).toEqual(before);
    expect(drafts()).toEqual(DRAFTS);
    expect(wordsOf(studio.out('draft.html'))).toContain('milking stool');
    expect(wordsOf(studio.out('draft.html'))).toContain('The work is the same as in the edition before.');

    studio.rewrite(CLIENT, '12 kg | 10 | 3', '16 kg | 14 | 3');
    const said = build('2026-12-31');
    expect(said).toContain('Ash Venn: edition 1 stands; what changed since is not in it. See the draft beside it.');
    expect(said).toMatch(/changes the work in \d+ places?\. `chalkleaf issue ash-venn` makes it edition 2\./);
    expect(issued()).toEqual(before);
    expect(studio.desk('clients/ash-venn.html')).toContain('What the draft would change');
    expect(studio.desk('clients/ash-venn.html')).toMatch(/Edition 1 stands, issued 28 December 2026/);

    // Issued, it is the one that is drawn, and nothing stands beside it.
    studio.run('2026-12-31', 'issue', 'ash-venn');
    build('2026-12-31');
    expect(drafts()).toEqual([]);
    expect(issued()).not.toEqual(before);
    expect(wordsOf(studio.out('booklet.html'))).toContain('Edition 2, 31 December 2026');
    expect(studio.desk('clients/ash-venn.html')).toContain('What edition 2 changed');
  });

  test('tells what it changes from what was frozen with it: the same after any later change', () => {
    const { plan } = studio.edition(1);
    const done = doAsPlanned(plan, 1);
    const pain = { id: markId(1, 900), seq: 900, edition: 1, at: '2027-01-04T19:30:00+01:00', occurrence: 1 };
    const report = { where: 'knee', degree: 3 } as const;
    studio.file([
      ...done,
      { ...pain, kind: 'pain', row: done[0]?.kind === 'set' ? rowOf(done[0].key) : rowOf(''), report },
    ]);
    studio.run('2027-01-05', 'issue', 'ash-venn');
    const { changes = [] } = studio.edition(2);
    expect(changes.some((change) => 'safety' in change && change.safety)).toBe(true);
    build('2027-01-05');
    const before = issued();
    const first = wordsOf(studio.out('booklet.html'));
    expect(first).toContain('because your knee was sore');
    expect(first).toContain('Your marks stay.');
    expect(studio.desk('clients/ash-venn.html')).toContain('Pain of 3 in the knee');
    studio.rewrite(SQUAT, 'name: Goblet squat', 'name: Squat with a bell');
    build('2027-01-06');
    expect(issued()).toEqual(before);
    // Without the record of its changes the edition is not what was frozen.
    const path = studio.home('editions/2/edition.json');
    const record = readFileSync(path, 'utf8');
    writeFileSync(path, record.replace('"way": "down"', '"way": "up"'));
    expect(studio.run('2027-01-06', 'build').out).toContain('edition-unreadable');
  });

  test('issuing again with nothing changed issues nothing, also after one that told of changes', () => {
    studio.rewrite(CLIENT, '12 kg | 10 | 3', '16 kg | 14 | 3');
    expect(studio.run('2026-12-29', 'issue', 'ash-venn').out).toContain('edition 2');
    expect(studio.run('2026-12-30', 'issue', 'ash-venn').out).toContain('Nothing has changed since edition 2');
    build('2026-12-30');
    expect(drafts()).toEqual([]);
  });

  test('says that it has ended a week after its last day, and can still be read', () => {
    // Its last session is on 8 February 2027.
    build('2027-02-15');
    expect(wordsOf(studio.out('booklet.html'))).not.toContain('This booklet has ended');
    const said = build('2027-02-16');
    const words = wordsOf(studio.out('booklet.html'));
    expect(words).toContain('This booklet has ended Its last day was 8 February 2027.');
    expect(words).toContain('12 kg × ');
    expect(said).toContain('Ash Venn: edition 1 has ended, and says so.');
    expect(said).toContain('The next block wants a new `starts`');
    expect(studio.desk('clients/ash-venn.html')).toContain('Edition 1 has ended');
  });

  test('of the next block tells how it begins', () => {
    const { plan } = studio.edition(1);
    studio.file([1, 2, 3, 4, 5, 6].flatMap((occurrence) => doAsPlanned(plan, occurrence)));
    studio.rewrite(CLIENT, 'blocks before: 0', 'blocks before: 1');
    studio.rewrite(CLIENT, 'starts: 2027-01-04', 'starts: 2027-02-15');
    build('2027-02-12');
    expect(wordsOf(studio.out('draft.html'))).toContain('New block: it begins where the last one ended.');
    studio.run('2027-02-12', 'issue', 'ash-venn');
    build('2027-02-12');
    expect(wordsOf(studio.out('booklet.html'))).toMatch(/Edition 2, 12 February 2027 New block: it begins where/);
    expect(drafts()).toEqual([]);
  });
});

test('another client drawn alone leaves the edition and its draft where they were', () => {
  studio.rewrite(SQUAT, 'as if on to a low stool', 'as if on to a milking stool');
  const page = readFileSync(studio.home('client.md'), 'utf8').replace('Ash Venn', 'Elm Orrin');
  writeFiles(join(studio.home(), '..'), [['elm-orrin/client.md', page]]);
  build('2026-12-30');
  const before = bytesBelow(studio.out());
  const alone = studio.run('2026-12-30', 'build', '--only', 'elm-orrin');
  expect([alone.code, alone.out]).toEqual([0, expect.not.stringContaining('leads nowhere')]);
  expect(bytesBelow(studio.out())).toEqual(before);
});

test('another client drawn alone: told whose new folder is not there yet', () => {
  const page = readFileSync(studio.home('client.md'), 'utf8').replace('Ash Venn', 'Elm Orrin');
  writeFiles(join(studio.home(), '..'), [['elm-orrin/client.md', page]]);
  build('2026-12-30');
  expect(studio.run('2026-12-30', 'key', 'rotate', 'ash-venn').code).toBe(0);
  const ran = studio.run('2026-12-30', 'build', '--only', 'elm-orrin');
  expect([ran.code, ran.out]).toEqual([
    0,
    expect.stringContaining('a link that leads nowhere: ash-venn. Build without'),
  ]);
});

const rowOf = (key: string) => rowId(key.split('/')[2] ?? 'goblet-squat');

test('where nothing newer can be planned the edition is drawn as it was; where it is not safe to train, nothing is', () => {
  studio.run('2026-12-28', 'build');
  const issued = readFileSync(studio.out('booklet.html'));
  studio.rewrite(CLIENT, 'minutes: 30', 'minutes: 10');
  expect(studio.run('2027-01-05', 'build').code).toBe(1);
  expect(readFileSync(studio.out('booklet.html')).equals(issued)).toBe(true);
  expect(readFileSync(studio.out('withheld.txt'), 'utf8')).toContain('Edition 1 is as it was issued');
  studio.rewrite(CLIENT, 'symptoms: no', 'symptoms: yes');
  expect(studio.run('2027-01-05', 'build').code).toBe(1);
  expect(existsSync(studio.out('booklet.html'))).toBe(false);
  expect(readFileSync(studio.out('withheld.txt'), 'utf8')).toContain('do not use an earlier copy');
});
