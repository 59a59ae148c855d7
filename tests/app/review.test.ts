/** The weekly review as a coach runs it: whom first, what is proposed, what would be written, and only then what is. */
import { readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, beforeEach, describe, expect, test, vi } from 'vitest';
import { proposedPage } from '../../src/app/proposed-page.js';
import { type ReviewWanted, runReview } from '../../src/app/run-review.js';
import { ruleId } from '../../src/model/identity.js';
import type { Proposal } from '../../src/model/review.js';
import { CLIENT, idOf, logFrom, type ReceiveStudio, receiveStudio } from './receive-studio.js';
import { bytesBelow, chalkleaf, type Ran, workFolder } from './run-chalkleaf.js';

const work = workFolder();
let studio: ReceiveStudio;
let page = '';
let before = '';

/** Mondays: the first two done, the knee sore both times, 4 in 10 the second. */
const marks = (degrees: readonly number[]): readonly unknown[] => {
  const events = degrees.flatMap((degree, index) => {
    const occurrence = index + 1;
    const at = `2027-01-${String(4 + 7 * index).padStart(2, '0')}`;
    return [
      ...[1, 2, 3].map((n) => ({
        at: `${at}T18:0${n}:00+00:00`,
        kind: 'set',
        key: `1/${occurrence}/goblet-squat/both/work/${n}`,
        exercise: 'goblet-squat',
        tempo: 'normal',
        done: 'done',
        reps: 8,
        load: { kg: 12, grams: 12000, mode: 'total', pieces: [], label: '12 kg' },
        asPlanned: false,
      })),
      { at: `${at}T18:05:00+00:00`, kind: 'reserve', occurrence, row: 'goblet-squat', side: 'both', reps: 2 },
      { at: `${at}T18:06:00+00:00`, kind: 'pain', occurrence, row: 'goblet-squat', report: { where: 'knee', degree } },
      { at: `${at}T18:07:00+00:00`, kind: 'closed', occurrence, effort: 6, minutes: 31 },
    ];
  });
  return events.map((event, index) => ({ id: idOf(index + 1), seq: index + 1, edition: 2, ...event }));
};

const DAY = '2027-01-12';
/** In a process of its own. */
const commanded = (...args: readonly string[]): Ran =>
  chalkleaf(['review', ...args, '--content', studio.content, '--today', DAY]);

/** The same in this process: many times faster. */
async function review(only?: string, apply?: ReviewWanted['apply'], json = false): Promise<Pick<Ran, 'code' | 'out'>> {
  let out = '';
  const write = vi.spyOn(process.stdout, 'write').mockImplementation((text) => {
    out += String(text);
    return true;
  });
  try {
    const options = {
      content: studio.content,
      out: '',
      state: '',
      today: DAY,
      json,
      ...(only === undefined ? {} : { only }),
    };
    return { code: await runReview(options, apply === undefined ? {} : { apply }), out };
  } finally {
    write.mockRestore();
  }
}
const onPage = (): string => readFileSync(page, 'utf8');

beforeAll(() => {
  studio = receiveStudio(work.path);
  page = join(studio.content, 'clients', CLIENT, 'client.md');
  before = onPage();
});
afterAll(() => work.away());
beforeEach(async () => {
  writeFileSync(page, before);
  rmSync(join(studio.content, 'clients', CLIENT, 'log'), { recursive: true, force: true });
  const filed = await studio.receiveHere(studio.put('log.json', logFrom(studio, marks([3, 4]))));
  expect(filed.code).toBe(0);
});

const CAUTION = [
  'cautions:',
  '  - what: knee',
  '    degree: take care',
  '    from: 2027-01-12',
  '    review: 2027-01-26',
  '    by: My name',
].join('\n');

describe('reading', () => {
  test('everybody in order of need, then what is to be done, and nothing is written', async () => {
    const whole = bytesBelow(studio.content);
    const { code, out } = await review();
    expect(code).toBe(0);
    const lines = out.split('\n');
    expect(lines[0]).toBe('Review of 12 January 2027: 1 client, in order of need');
    expect(lines[2]).toBe('  Ash Venn              pain           knee, 4 of 10, Mon 11 Jan');
    expect(out).toContain('Ash Venn: block 1, First six weeks, week 2 of 6');
    expect(out).toMatch(/ 1\. Write to them: pain of 4 in 10, the knee in the goblet squat on 11 January\s+2027\./);
    expect(out).toContain('+    degree: take care');
    expect(out).toContain(`Nothing has been written. To write it: chalkleaf review ${CLIENT} --apply`);
    for (const line of lines) expect(Array.from(line).length).toBeLessThanOrEqual(80);
    expect(bytesBelow(studio.content)).toEqual(whole);
  });

  test('as data for other programs', async () => {
    const { code, out } = await review(CLIENT, undefined, true);
    const { command, reviews, changes, exit } = JSON.parse(out);
    expect([code, command, exit]).toEqual([0, 'review', 0]);
    expect(reviews).toMatchObject([
      {
        client: CLIENT,
        name: 'Ash Venn',
        need: 'pain',
        today: '2027-01-12',
        weeks: [{ planned: 1, done: 1 }, { done: 1 }, {}, {}, {}, {}],
      },
    ]);
    const [message] = reviews[0].proposals;
    expect(message.reason.rule).toBe('propose-message');
    expect(message.says).toMatch(/^Write to them: pain of 4 in 10.*\.$/);
    expect(changes).toMatchObject([{ client: CLIENT, path: `clients/${CLIENT}/client.md`, written: false }]);
    expect(changes[0].diff).toContain('+  - what: knee');
  });

  test('a client who is not there', async () => {
    const { code, out } = await review('ash-ven');
    expect(code).toBe(1);
    expect(out).toContain('ash-venn');
  });
});

describe('writing', () => {
  test('--apply writes what was shown, once', async () => {
    const { code, out } = await review(CLIENT, true);
    expect(code).toBe(0);
    expect(out).toContain('+  - what: knee');
    expect(out).toContain('The page of Ash Venn has been changed.');
    expect(onPage()).toContain(CAUTION);
    expect(onPage().replace(`${CAUTION}\n`, '')).toBe(before);
    const again = await review(CLIENT, true);
    expect(again.code).toBe(0);
    expect(again.out).not.toContain('propose-caution');
    expect(onPage().match(/what: knee/g)).toHaveLength(1);
  });

  test('of rules that are named, those alone', async () => {
    const none = await review(CLIENT, ['propose-break', 'propose-next-block']);
    expect(none.code).toBe(0);
    expect(onPage()).toBe(before);
    const { out, code, err } = commanded(CLIENT, '--apply', 'propose-look, propose-caution');
    expect([code, err]).toEqual([0, '']);
    expect(out).toContain('Written');
    expect(onPage()).toContain(CAUTION);
  });

  test('as data, it says that it was written', async () => {
    const { changes } = JSON.parse((await review(CLIENT, true, true)).out);
    expect(changes).toMatchObject([{ client: CLIENT, written: true }]);
    expect(onPage()).toContain(CAUTION);
  });

  test('a page that cannot be read stays, and the report says why', async () => {
    const wrong = before.replace('days: mon', 'days: noday');
    writeFileSync(page, wrong);
    const { code, out } = await review(CLIENT, true);
    expect(code).toBe(1);
    expect(out).toContain('clients/ash-venn/client.md:');
    expect(out).toContain('Nothing was reviewed.');
    expect(onPage()).toBe(wrong);
  });
});

describe('a page with what is proposed', () => {
  const proposal = (...edits: Proposal['edits']): Proposal => ({
    reason: { rule: ruleId('x'), says: '', inputs: [], source: '', confidence: 'measured', audience: 'coach' },
    edits,
  });
  const minutes = { kind: 'set', path: ['minutes'], value: '40' } as const;
  const starts = { kind: 'set', path: ['starts'], value: '2027-02-15' } as const;
  const impossible = { kind: 'set-in-entry', path: ['cautions', 7], key: 'degree', value: 'avoid' } as const;
  const path = `clients/${CLIENT}/client.md`;
  const of = (...proposals: readonly Proposal[]) => {
    const files = bytesBelow(studio.content).map(([name]) => ({
      path: name,
      bytes: new Uint8Array(readFileSync(join(studio.content, name))),
    }));
    const { page: made, problems } = proposedPage(files, path, proposals);
    return { after: made?.after ?? null, codes: problems.map(({ code }) => code) };
  };

  test('has as much of it as can be made, each proposal whole', () => {
    const both = before.replace('minutes: 30', 'minutes: 40').replace('starts: 2027-01-04', 'starts: 2027-02-15');
    expect(of(proposal(minutes), proposal(starts))).toEqual({ after: both, codes: [] });
    expect(of(proposal(minutes), proposal(impossible), proposal(starts))).toEqual({
      after: both,
      codes: ['edit-not-possible'],
    });
    expect(of(proposal(minutes), proposal(starts, impossible))).toEqual({
      after: before.replace('minutes: 30', 'minutes: 40'),
      codes: ['edit-not-possible'],
    });
  });

  test('makes what several propose once, and nothing where none has anything to write', () => {
    const entry = {
      kind: 'add-to-list',
      path: ['breaks'],
      entry: { from: '2027-01-05', until: '2027-01-09', cause: 'away' },
    } as const;
    expect(of(proposal(entry), proposal(entry)).after?.match(/cause: away/g)).toHaveLength(1);
    expect(of(proposal(), proposal())).toEqual({ after: null, codes: [] });
  });
});

describe('a command line that makes no sense', () => {
  test.each([
    ['no client', ['--apply'], 'name the client before it'],
    ['no such rule', [CLIENT, '--apply', 'propose-nonsense'], '“propose-nonsense” is none of'],
    ['the client where rules belong', ['--apply', CLIENT], 'with the client named before it'],
  ])('%s', (_, args, says) => {
    const { code, err } = commanded(...args);
    expect(code).toBe(2);
    expect(err).toContain(says);
    expect(onPage()).toBe(before);
  });
});
