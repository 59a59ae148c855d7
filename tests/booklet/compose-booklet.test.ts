/** The booklet from a hand-made plan: everything in it once, nothing private, and every line fit for a client. */
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { composeBooklet } from '../../src/booklet/compose-booklet.js';
import type { Booklet, Part } from '../../src/model/booklet.js';
import { exerciseId, rowId, sessionId, setKey } from '../../src/model/identity.js';
import type { Item, Plan, PlanSet } from '../../src/model/plan.js';
import { plainText } from '../../src/model/prose.js';
import { client, library, SECRET } from '../fixtures/library.js';
import { load, plan } from '../fixtures/plan.js';
import { bannedIn, longestSentence } from '../words/ban-list.js';
import { tellBooklet } from './tell-booklet.js';

const booklet = composeBooklet({ library, client, plan });

function partsOf<Kind extends Part['kind']>(
  kind: Kind,
  of: Booklet = booklet,
): readonly Extract<Part, { kind: Kind }>[] {
  return of.parts.filter((part): part is Extract<Part, { kind: Kind }> => part.kind === kind);
}

const setsOf = (of: Plan): readonly PlanSet[] =>
  of.weeks.flatMap((week) =>
    week.sessions.flatMap(({ groups }) => groups.flatMap(({ items }) => items.flatMap(({ sets }) => sets))),
  );
const cells = partsOf('session').flatMap(({ rows }) => rows.flatMap((row) => row.cells));
const rows = partsOf('session').flatMap((session) => session.rows);
const rowNamed = (id: string) => rows.find(({ row }) => row === id);

test('reads as the golden does', () => {
  const file = join(import.meta.dirname, 'booklet.golden.txt');
  const told = tellBooklet(booklet);
  if (process.env.UPDATE) writeFileSync(file, told);
  expect(told.split('\n').length).toBeLessThan(200);
  expect(told).toBe(readFileSync(file, 'utf8'));
});

describe('the work', () => {
  test('every set of the plan stands in the booklet exactly once, with its load and its amount', () => {
    const drawn = cells.flatMap((cell) => cell.sets);
    expect(drawn.map(({ key }) => key).sort()).toEqual(
      setsOf(plan)
        .map(({ key }) => key)
        .sort(),
    );
    expect(new Set(drawn.map(({ key }) => key)).size).toBe(drawn.length);
    for (const set of setsOf(plan)) {
      const said = drawn.find(({ key }) => key === set.key);
      expect(said?.amount, set.key).toBe(`${set.reps}`);
      expect(said?.load?.figure, set.key).toBe(set.load?.label.split(' ')[0]);
      expect(said?.load?.unit, set.key).toBe(set.load?.label.split(' ')[1]);
    }
  });

  test('a load is never without its unit', () => {
    const told = tellBooklet(booklet);
    expect(told.match(/(?<![\d.] ?(kg|lb)) × \d+/g) ?? []).toEqual([]);
  });

  test('has a stroke for each set but the warm-up, and a row of strokes for each side, the weaker first', () => {
    const squat = rowNamed('goblet-squat');
    expect(squat?.cells.map(({ tally }) => tally.map(({ strokes }) => strokes))).toEqual([[3], [3], [2]]);
    const pull = rowNamed('one-arm-row');
    expect(pull?.sides).toBe('Right first, then left.');
    expect(pull?.cells.map(({ tally }) => tally)).toEqual(
      [3, 3, 2].map((strokes) => [
        { label: 'Right', strokes },
        { label: 'Left', strokes },
      ]),
    );
  });

  test('a gate says what it needs and what to do otherwise, and so does every week after it', () => {
    const gates = rowNamed('goblet-squat')?.cells.map(({ gate }) => gate);
    expect(gates?.[0]).toBeUndefined();
    expect(gates?.[1]?.needs).toContain('every set of 16\u00a0kg ×\u00a09 in week\u00a01');
    expect(gates?.[1]?.otherwiseStack).toEqual(['16\u00a0kg', '×10']);
    expect(gates?.[2]?.needs).toBe('Only if you went up in week\u00a02.');
    expect(gates?.[2]?.otherwise).toContain('16\u00a0kg ×\u00a08');
  });

  test('a feeler set has a line for each answer', () => {
    expect(rowNamed('feel')?.cells[0]?.choose?.rows.map(({ use }) => use)).toEqual([
      '20\u00a0kg ×\u00a08',
      '16\u00a0kg ×\u00a08',
      'Box squat, 12\u00a0kg ×\u00a08',
    ]);
  });

  test('work whose load a feeler set finds is not taken for the body alone', () => {
    const open = withItems(plan, (item) =>
      item.row === 'feel'
        ? {
            ...item,
            sets: item.sets.concat(
              item.sets.map(({ choose: _choose, load: _load, ...set }) => ({
                ...set,
                kind: 'work' as const,
                key: setKey({ block: 1, occurrence: 1, row: rowId('feel'), side: 'both', kind: 'work', ordinal: 1 }),
              })),
            ),
          }
        : item,
    );
    const row = partsOf('session', composeBooklet({ library, client, plan: open }))[0]?.rows.find(
      ({ row: id }) => id === 'feel',
    );
    expect(row?.cells[0]?.stack).toEqual(['your\u00a0load', '×8']);
    expect(row?.cells[0]?.sets.map(({ text }) => text)).toEqual(['16\u00a0kg ×\u00a06', 'your\u00a0load ×\u00a08']);
  });

  test('a trial of a harder version names it, and it has a page', () => {
    const tried = withItems(plan, (item) => ({
      ...item,
      sets: item.sets.map((set) =>
        set.kind === 'trial' ? { ...set, exercise: exerciseId('double-front-squat'), load: load(12) } : set,
      ),
    }));
    const other = composeBooklet({ library, client, plan: tried });
    const cell = partsOf('session', other)[0]?.rows.find(({ row }) => row === 'one-arm-row')?.cells[1];
    expect(cell?.trial).toBe('First set: try the front squat, 12\u00a0kg ×\u00a04.');
    expect(partsOf('exercise', other).map(({ id }) => id)).toContain('double-front-squat');
  });

  test('why is not said twice running', () => {
    for (const row of rows)
      row.cells.forEach((cell, i) => {
        for (const says of cell.why) expect(row.cells[i - 1]?.why ?? []).not.toContain(says);
      });
  });
});

describe('the pages', () => {
  test('why is said three times at most on a page, what changes the work first', () => {
    for (const { why = [], title } of partsOf('exercise')) expect(why.length, title).toBeLessThanOrEqual(3);
    const squat = partsOf('exercise').find(({ id }) => id === 'goblet-squat')?.why?.[0];
    expect(squat?.lead.replaceAll('\u00a0', ' ')).toBe('Week 2');
    expect(squat?.text).toBe('Two good sessions at the top earn the next load.');
  });

  test('an exercise of two sessions says of which its why is', () => {
    const [first, ...later] = plan.weeks;
    const again = first?.sessions.map((session) => ({ ...session, id: sessionId('z'), name: 'Again' })) ?? [];
    const twice: Plan = {
      ...plan,
      weeks: first === undefined ? [] : [{ ...first, sessions: [...first.sessions, ...again] }, ...later],
    };
    const page = partsOf('exercise', composeBooklet({ library, client, plan: twice })).find(
      ({ id }) => id === 'goblet-squat',
    );
    const leads = page?.why?.map(({ lead }) => lead.replaceAll('\u00a0', ' '));
    expect(leads).toEqual(['Session A, week 2', 'Session A, week 1; Session Z', 'Session A, week 3']);
  });

  test('every exercise one can be led to has a page, and no other', () => {
    expect(partsOf('exercise').map(({ id }) => id)).toEqual(['goblet-squat', 'one-arm-row', 'push-up', 'box-squat']);
  });

  test('an easier version this client may not do is not offered; a harder one nobody planned neither', () => {
    const page = partsOf('exercise').find(({ id }) => id === 'goblet-squat');
    const easier = page?.sections.find(({ name }) => name === 'easier')?.lines.map(({ lead }) => plainText(lead));
    expect(easier).toEqual(['Box squat', 'Slower, to half depth']);
    expect(page?.sections.some(({ name }) => name === 'harder')).toBe(false);
  });

  test('every page has what a client needs to do it alone', () => {
    for (const { sections, stop, title } of partsOf('exercise')) {
      const names = sections.map(({ name }) => name);
      for (const name of ['set-up', 'pick up', 'cues', 'breath', 'put down', 'faults', 'easier'] as const)
        expect(names, title).toContain(name);
      expect(stop.length, title).toBeGreaterThan(0);
    }
  });

  test('the coach’s words for a caution come first where the exercise asks for it, and nowhere else', () => {
    const words = 'Keep the last hand’s breadth of depth for later.';
    const first = (id: string) => plainText(rowNamed(id)?.cues[0] ?? []);
    expect(first('goblet-squat')).toBe(words);
    expect(first('one-arm-row')).not.toBe(words);
    expect(rows.every(({ cues }) => cues.length <= 3)).toBe(true);
    const ended = { ...client, cautions: client.cautions.map((caution) => ({ ...caution, until: caution.from })) };
    expect(JSON.stringify(composeBooklet({ library, client: ended, plan }))).not.toContain('hand’s breadth');
  });

  test('no link leads into the author’s folder', () => {
    expect(JSON.stringify(booklet)).not.toMatch(/\.md"/);
  });
});

describe('safety', () => {
  test('says in full that it is not medical advice on the front, and in one line at each session', () => {
    const cover = partsOf('cover')[0];
    expect(cover?.notMedical).toContain('not medical advice');
    expect(cover?.notMedical).toMatch(/doctor, midwife or physiotherapist/);
    for (const { safety } of partsOf('session')) {
      expect(safety).toContain('Not medical advice');
      expect(safety).toContain('999');
    }
  });

  test('every emergency sign is there, with the studio’s number', () => {
    const page = partsOf('safety')[0];
    const told = page?.emergency.map(plainText).join(' ') ?? '';
    for (const sign of [
      /chest, jaw or arm/,
      /faint/,
      /severe headache/,
      /one side/,
      /numbness/,
      /bladder or bowel/,
      /Breathlessness/,
      /calf/,
    ])
      expect(told).toMatch(sign);
    expect(page?.call).toContain('999');
    const other = composeBooklet({
      library: { ...library, studio: { ...library.studio, emergencyNumber: '112' } },
      client,
      plan,
    });
    expect(JSON.stringify(other)).not.toContain('999');
  });

  test('pain has its bands, stricter than the clinic’s', () => {
    expect(partsOf('safety')[0]?.pain.map(({ degree }) => degree)).toEqual([
      '0 to 2',
      '3',
      '4 and over',
      'Worse next morning',
    ]);
  });
});

describe('fit for a client', () => {
  const told = tellBooklet(booklet);

  test('nothing private', () => {
    expect(told).not.toContain(SECRET);
    for (const secret of ['Dr Unseen Surname', '70.3', '70300', 'meniscus', 'mornings', '1988'])
      expect(JSON.stringify(booklet)).not.toContain(secret);
  });

  test('no coach’s shorthand, no praise, no pressure', () => {
    expect(told.split('\n').flatMap(bannedIn)).toEqual([]);
    expect(bannedIn('RPE 8')).toHaveLength(1);
    expect(bannedIn('80 % of your 1RM')).toHaveLength(2);
  });

  test('on the screen of a set no sentence has more than twelve words', () => {
    const said = rows.flatMap((row) => [
      row.rest,
      row.sides,
      ...row.cells.flatMap((cell) => [
        cell.effort,
        cell.tempo,
        cell.trial ?? '',
        cell.gate?.needs ?? '',
        cell.gate?.otherwise ?? '',
        cell.choose?.intro ?? '',
        ...cell.why,
      ]),
    ]);
    for (const text of said) expect(longestSentence(text), text).toBeLessThanOrEqual(12);
    expect(longestSentence('One two three four five six seven eight nine ten eleven twelve thirteen.')).toBe(13);
  });

  test('runs the way its language does', () => {
    const arabic = composeBooklet({ library, client: { ...client, language: 'ar' }, plan });
    expect(arabic.direction).toBe('rtl');
    expect(JSON.stringify(arabic)).toContain('\u206616\u00a0kg ×\u00a09\u2069');
    expect(booklet.direction).toBe('ltr');
    expect(JSON.stringify(booklet)).not.toMatch(/[\u2066-\u2069]/);
  });
});

test('the same session twice in a week makes two, each with its own columns', () => {
  const twice: Plan = {
    ...plan,
    weeks: plan.weeks.map((week) => ({
      ...week,
      sessions: week.sessions.flatMap((session) => [session, { ...session, occurrence: session.occurrence + 10 }]),
    })),
  };
  const sessions = partsOf('session', composeBooklet({ library, client, plan: twice }));
  expect(sessions.map(({ id, title }) => [id, title])).toEqual([
    ['a', 'Session\u00a0A: Squat and pull'],
    ['a.2', 'Session\u00a0A: Squat and pull, again'],
  ]);
  expect(sessions.every(({ weeks }) => weeks.length === 3)).toBe(true);
});

test('a row that one week leaves out keeps its place', () => {
  const first = plan.weeks[0];
  const shorter = withItems(plan, (item) => item);
  const cut: Plan = {
    ...shorter,
    weeks: shorter.weeks.map((week) =>
      week.number === first?.number
        ? {
            ...week,
            sessions: week.sessions.map((session) => ({
              ...session,
              groups: session.groups.map((group) => ({
                ...group,
                items: group.items.filter(({ row }) => row !== 'goblet-squat' && row !== 'feel'),
              })),
            })),
          }
        : week,
    ),
  };
  const [session] = partsOf('session', composeBooklet({ library, client, plan: cut }));
  expect(session?.rows.map(({ row }) => row)).toEqual(['goblet-squat', 'one-arm-row', 'push-up']);
  expect(session?.rows[0]?.cells.map(({ week }) => week)).toEqual([2, 3]);
});

function withItems(of: Plan, change: (item: Item) => Item): Plan {
  return {
    ...of,
    weeks: of.weeks.map((week) => ({
      ...week,
      sessions: week.sessions.map((session) => ({
        ...session,
        groups: session.groups.map((group) => ({ ...group, items: group.items.map(change) })),
      })),
    })),
  };
}
