/** The page of an exercise that a client does in one easier way of it alone: that way leads, and what it does away with is left out. */
import { expect, test } from 'vitest';
import { composeBooklet } from '../../src/booklet/compose-booklet.js';
import type { Version } from '../../src/model/exercise.js';
import { exerciseId } from '../../src/model/identity.js';
import type { Item, Plan } from '../../src/model/plan.js';
import { plainText } from '../../src/model/prose.js';
import { planDemo } from '../studio/demo-plans.js';

const demo = await planDemo();
const client = demo.clients.find(({ id }) => id === 'rowan-ashby');
const planned = client && demo.plans.get(client.id);
if (client === undefined || planned === undefined) throw new Error('rowan-ashby has a plan');
const of = { client, library: demo.library, plan: planned };

const easierOf = (id: string): readonly Version[] =>
  of.library.exercises.find((exercise) => exercise.id === id)?.words.easier ?? [];
const wayOf = (id: string, words: string): NonNullable<Item['done']> => {
  const to = easierOf(id).find(({ say }) => plainText(say).startsWith(words))?.to;
  if (to?.kind !== 'way') throw new Error(`${id} has the way ${words}`);
  return { way: `${id}#${to.slug}`, say: words };
};

/** The page of `id`, done in place of the first exercise of the plan, in each week in the way told for it. */
function pageOf(id: string, ways: readonly (string | undefined)[]) {
  const first = of.plan.weeks[0]?.sessions[0]?.groups.find(({ kind }) => kind === 'straight')?.items[0]?.row;
  const as = (item: Item, week: number): Item => {
    const words = ways[(week - 1) % ways.length];
    const { done: _other, ...rest } = { ...item, exercise: exerciseId(id), easier: [] };
    return words === undefined ? rest : { ...rest, done: wayOf(id, words) };
  };
  const plan: Plan = {
    ...of.plan,
    weeks: of.plan.weeks.map((week) => ({
      ...week,
      sessions: week.sessions.map((session) => ({
        ...session,
        groups: session.groups.map((group) => ({
          ...group,
          items: group.items.map((item) => (item.row === first || item.exercise === id ? as(item, week.number) : item)),
        })),
      })),
    })),
  };
  const { parts } = composeBooklet({ ...of, plan });
  const page = parts.find((part) => part.kind === 'exercise' && part.id === id);
  if (page?.kind !== 'exercise') throw new Error(`${id} has a page`);
  return { lead: plainText(page.description[0] ?? []), sections: page.sections.map(({ name }) => name) };
}

const FLOOR = ['set-up', 'pick up', 'put down'];

test('done standing, the way down to the floor and up again is not told', () => {
  const { lead, sections } = pageOf('prone-row', ['Standing with your back to a wall']);
  expect(lead).toContain('Only like this: Standing with your back to a wall');
  expect(lead).toContain('Where this page says otherwise, that holds.');
  expect(sections.filter((name) => FLOOR.includes(name))).toEqual([]);
  expect(sections).toContain('cues');
});

test.each([
  ['prone-row', 'One arm'],
  ['heel-to-toe-walk', 'A hand on the worktop'],
])('%s, %s: the set-up stays where the way needs it', (id, words) => {
  const { lead, sections } = pageOf(id, [words]);
  expect(lead).toContain(`Only like this: ${words}`);
  expect(sections).toEqual(expect.arrayContaining(FLOOR));
});

test.each([
  ['in no way of its own', [undefined]],
  ['in some weeks alone', ['Standing with your back to a wall', undefined]],
  ['in two ways', ['Standing with your back to a wall', 'One arm']],
])('done %s, the page is as it was written', (_, ways) => {
  const { lead, sections } = pageOf('prone-row', ways);
  expect(lead).toContain('A row for a day with no kit');
  expect(sections).toEqual(expect.arrayContaining(FLOOR));
});
