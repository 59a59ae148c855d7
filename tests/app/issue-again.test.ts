/** Issue, marks come back, issue again: as a coach does it, week after week and block after block. */
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { Edition } from '../../src/model/edition.js';
import type { LogEvent } from '../../src/model/log.js';
import type { Plan } from '../../src/model/plan.js';
import { doAsPlanned, sessionAt } from '../session/make-marks.js';
import { bytesBelow, chalkleaf, smallStudio, workFolder, writeFiles } from './run-chalkleaf.js';

let work = workFolder();
beforeEach(() => {
  work = workFolder();
  writeFiles(join(work.path, 'content'), smallStudio());
  // Bells near enough to climb, and a test that leaves reps to add.
  rewrite('bells: 12, 16, 20', 'bells: 10, 12, 14, 16, 18, 20');
  rewrite('12 kg | 10 | 3', '12 kg | 10 | 1');
});
afterEach(() => work.away());

const home = (...below: string[]) => join(work.path, 'content/clients/ash-venn', ...below);
const run = (today: string, ...args: string[]) =>
  chalkleaf([...args, '--today', today, '--content', join(work.path, 'content'), '--out', join(work.path, 'out')]);
const issue = (today: string) => run(today, 'issue', 'ash-venn');
const edition = (n: number): Edition => JSON.parse(readFileSync(home('editions', String(n), 'edition.json'), 'utf8'));
/** Files everything that was marked so far, as one device. */
function file(events: readonly LogEvent[], { bookletId } = edition(1)): void {
  mkdirSync(home('log'), { recursive: true });
  const log = { schema: 1, bookletId, device: 'phone', events };
  writeFileSync(home('log', 'phone.json'), `${JSON.stringify(log, null, 1)}\n`);
}
const rewrite = (from: string | RegExp, to: string) => {
  const page = readFileSync(home('client.md'), 'utf8');
  expect(page.search(from)).toBeGreaterThan(-1);
  writeFileSync(home('client.md'), page.replace(from, to));
};
const all = [1, 2, 3, 4, 5, 6];
const doAll = (plan: Plan) => all.flatMap((occurrence) => doAsPlanned(plan, occurrence));
const letters = (of: unknown) => JSON.stringify(of);
/** `16 kg × 9` of the row's first set of work. */
const workIn = (plan: Plan, occurrence: number, row = 'goblet-squat') => {
  const items = sessionAt(plan, occurrence).groups.flatMap((group) => group.items);
  const set = items.find((item) => item.row === row)?.sets.find(({ kind }) => kind === 'work');
  return set === undefined ? undefined : { grams: set.load?.grams ?? 0, reps: set.reps ?? 0 };
};

describe('within a block', () => {
  test('the next edition begins with what is not done; what is done, and the edition it was done in, stay as they were', () => {
    expect(issue('2026-12-28').out).toContain('edition 1');
    const first = edition(1);
    expect(first).toMatchObject({ n: 1, block: 1, from: '2027-01-04' });
    const frozen = bytesBelow(home('editions', '1'));
    file([...doAsPlanned(first.plan, 1), ...doAsPlanned(first.plan, 2)]);
    expect(issue('2027-01-12').out).toContain('edition 2');
    const second = edition(2);
    expect(second).toMatchObject({ n: 2, supersedes: 1, block: 1, from: '2027-01-18', bookletId: first.bookletId });
    expect(second.plan.inputs.done).toEqual([
      { occurrence: 1, day: '2027-01-04', edition: 1 },
      { occurrence: 2, day: '2027-01-11', edition: 1 },
    ]);
    for (const occurrence of [1, 2]) {
      expect(letters(sessionAt(second.plan, occurrence))).toBe(letters(sessionAt(first.plan, occurrence)));
    }
    expect(bytesBelow(home('editions', '1'))).toEqual(frozen);
    expect(issue('2027-01-12').out).toContain('Nothing has changed since edition 2');

    // Done in the second edition, and told a third time: each session stays as it was in its own.
    file([
      ...doAsPlanned(first.plan, 1),
      ...doAsPlanned(first.plan, 2),
      ...doAsPlanned(second.plan, 3, { edition: 2 }),
    ]);
    expect(issue('2027-01-19').out).toContain('edition 3');
    const third = edition(3);
    expect(third.plan.inputs.done?.map((one) => one.edition)).toEqual([1, 1, 2]);
    expect(letters(sessionAt(third.plan, 3))).toBe(letters(sessionAt(second.plan, 3)));
    expect(run('2027-01-19', 'build').code).toBe(0);
  });

  test('an edition of which nothing was marked is taken the place of', () => {
    issue('2026-12-28');
    rewrite('starts: 2027-01-04', 'starts: 2027-01-11');
    expect(issue('2026-12-29').out).toContain('edition 2');
    expect(edition(2)).toMatchObject({ n: 2, supersedes: 1, block: 1, from: '2027-01-11' });
    expect(edition(2).plan.inputs.done).toBeUndefined();
  });

  test.each([
    ['starts', /starts: .*/, 'starts: 2027-01-11', 'starts: 2027-01-04, to go on with the block'],
    ['days', /days: .*/, 'days: tue', 'days: mon, to go on with the block'],
  ])('with a session done, %s stays, or the next block begins', (_, from, to, hint) => {
    issue('2026-12-28');
    file(doAsPlanned(edition(1).plan, 1));
    rewrite(from, to);
    const ran = issue('2027-01-05');
    expect(ran.code).toBe(1);
    expect(ran.out).toContain('block-begun');
    expect(ran.out).toContain('1 session of block 1 is done');
    expect(ran.out.replace(/\s+/g, ' ')).toContain(hint);
    rewrite('blocks before: 0', 'blocks before: 1');
    expect(issue('2027-01-05').out).toContain('edition 2');
    expect(edition(2).block).toBe(2);
  });

  test('a log or an edition that is not as it was filed withholds the client, and says which', () => {
    issue('2026-12-28');
    file(doAsPlanned(edition(1).plan, 1));
    const marks = readFileSync(home('log', 'phone.json'), 'utf8');
    writeFileSync(home('log', 'phone.json'), marks.slice(0, 400));
    const cut = issue('2027-01-05');
    expect([cut.code, cut.out]).toEqual([1, expect.stringContaining('marks-unreadable')]);
    expect(cut.out).toContain('log/phone.json');
    writeFileSync(home('log', 'phone.json'), marks);

    const record = readFileSync(home('editions', '1', 'edition.json'), 'utf8');
    const damaged = [
      record.replace('"grams": 12000', '"grams": 16000'),
      record.replace('"schema": 1', '"schema": 0'),
      record.replace('"n": 1', '"n": 2'),
      record.replace('"block": 1', '"block": 3'),
      record.replace(/^ "block": 1,\n/m, ''),
      record.replace(/^ {2}"block": 1,\n/m, ''),
    ];
    const why = [
      'its plan is not the one',
      'an older version froze it, in format 0',
      'edition 2',
      'block 3',
      'it is of an older form',
      'it is of an older form',
    ];
    damaged.forEach((text, index) => {
      expect(text).not.toBe(record);
      writeFileSync(home('editions', '1', 'edition.json'), text);
      const ran = run('2027-01-05', 'check');
      expect(ran.out).toContain('edition-unreadable');
      expect(ran.out.replace(/\s+/g, ' ')).toContain(why[index]);
    });
    writeFileSync(home('editions', '1', 'edition.json'), record);
    expect(issue('2027-01-05').out).toContain('edition 2');
  });
});

describe('the next block', () => {
  const begin = (...more: (readonly [RegExp, string])[]) => {
    issue('2026-12-28');
    const { plan } = edition(1);
    file(doAll(plan));
    rewrite('blocks before: 0', 'blocks before: 1');
    rewrite('starts: 2027-01-04', 'starts: 2027-02-15');
    for (const [from, to] of more) rewrite(from, to);
    return plan;
  };
  /** The last week but the easy one. */
  const reached = (plan: Plan) => workIn(plan, 5) ?? expect.fail('no work in week 5');

  test('of the same programme goes on with the load the last one reached', () => {
    const before = begin();
    expect(reached(before).reps).toBeGreaterThan(workIn(before, 1)?.reps ?? 99);
    expect(issue('2027-02-10').out).toContain('edition 2');
    const { plan, block, from } = edition(2);
    expect([block, from, plan.block, plan.inputs.done]).toEqual([2, '2027-02-15', 2, undefined]);
    expect(
      sessionAt(plan, 1)
        .groups.flatMap(({ items }) => items)
        .at(-1)?.sets[0]?.key,
    ).toMatch(/^2\/1\//);
    expect(workIn(plan, 1)).toEqual(reached(before));
    expect(reached(plan).reps).toBeGreaterThan(reached(before).reps);
    const strand = plan.inputs.strands.find(({ row }) => row === 'goblet-squat');
    expect(strand?.start?.load).toBe(reached(before).grams);
    expect(strand?.greatest).toBeGreaterThan(0);
    expect(plan.inputs.capacities.find(({ exercise }) => exercise === 'goblet-squat')?.test.marked).toBe(true);
    expect(plan.inputs.recalls?.find(({ exercise }) => exercise === 'goblet-squat')?.last?.grams).toBe(
      reached(before).grams,
    );
  });

  test('marks that say it was light are built upon: the next block begins no lighter, and goes further', () => {
    issue('2026-12-28');
    const { plan: before } = edition(1);
    file(all.flatMap((occurrence) => doAsPlanned(before, occurrence, { reserve: 5 })));
    rewrite('blocks before: 0', 'blocks before: 1');
    rewrite('starts: 2027-01-04', 'starts: 2027-02-15');
    issue('2027-02-10');
    const { plan } = edition(2);
    expect(workIn(plan, 1)?.grams).toBeGreaterThanOrEqual(reached(before).grams);
    const workOf = (of: Plan) =>
      all.slice(0, 5).map((one) => (workIn(of, one)?.grams ?? 0) * (workIn(of, one)?.reps ?? 0));
    expect(Math.max(...workOf(plan))).toBeGreaterThan(Math.max(...workOf(before)));
  });

  test('of another programme begins from what the exercise reached, in its own rows', () => {
    const programmes = join(work.path, 'content/programmes');
    const page = readFileSync(join(programmes, 'first-six-weeks.md'), 'utf8')
      .replace('name: First six weeks', 'name: Second six weeks')
      .replace('## A: Legs', '## L: Lower body')
      .replace('3 × 6–10', '4 × 5–8');
    writeFileSync(join(programmes, 'second-six-weeks.md'), page);
    const before = begin([/programme: .*/, 'programme: second-six-weeks']);
    const ran = issue('2027-02-10');
    expect(ran.out).toContain('edition 2');
    const { plan } = edition(2);
    expect(plan.programme).toBe('second-six-weeks');
    expect(sessionAt(plan, 1).id).toBe('L');
    const strand = plan.inputs.strands.find(({ row }) => row === 'goblet-squat');
    expect(strand?.start?.load).toBeGreaterThanOrEqual(reached(before).grams);
    expect(plan.inputs.capacities.find(({ exercise }) => exercise === 'goblet-squat')?.test.marked).toBe(true);
  });
});
