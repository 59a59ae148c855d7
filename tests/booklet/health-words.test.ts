/** What a client with facts of health reads: what to do beside the exercises that ask for it, and signs to stop at. */
import { expect, test } from 'vitest';
import { composeBooklet } from '../../src/booklet/compose-booklet.js';
import { exerciseId, ruleId } from '../../src/model/identity.js';
import type { Plan } from '../../src/model/plan.js';
import { plainText } from '../../src/model/prose.js';
import type { Library } from '../../src/model/studio.js';
import type { ClientRuleName } from '../../src/words/client-reason-words.js';
import { clientSaying } from '../../src/words/say-to-client.js';
import { speechOf } from '../../src/words/speech.js';
import { client, library } from '../fixtures/library.js';
import { plan, reason } from '../fixtures/plan.js';
import { bannedIn } from '../words/ban-list.js';
import { tellBooklet } from './tell-booklet.js';

const planned = plan.weeks[0]?.sessions[0]?.groups.flatMap(({ items }) => items)[0]?.exercise ?? exerciseId('none');
/** The first exercise planned asks for the breath to be held; nothing else asks anything. */
const shelf: Library = {
  ...library,
  exercises: library.exercises.map((exercise) => {
    const asks =
      exercise.id === planned ? [{ of: 'breath hold', degree: 'some', side: 'both', phases: [] } as const] : [];
    return { ...exercise, facts: { ...exercise.facts, asks } };
  }),
};
const withHealth = (more: Partial<Plan>): Plan => ({
  ...plan,
  ...more,
  inputs: {
    ...plan.inputs,
    standing: {
      moderate: true,
      derived: [{ rule: 'pregnancy-breath', what: 'breath hold', degree: 'avoid' }],
      health: [{ fact: 'pregnancy', value: 'due 2027-05-01; twins' }],
    },
  },
});
const signs = {
  rule: ruleId('pregnancy-signs'),
  audience: 'client',
  weeks: [],
  reason: reason('pregnancy-signs', 'client'),
} as const;
const uncautioned = { ...client, cautions: [] };
const booklet = composeBooklet({ library: shelf, client: uncautioned, plan: withHealth({ findings: [signs] }) });
const bare = composeBooklet({ library: shelf, client: uncautioned, plan: { ...plan, findings: [] } });

const says = (rule: ClientRuleName): string => clientSaying(rule, speechOf('en-GB'))?.(() => '') ?? '';
const safetyOf = ({ parts }: typeof booklet): readonly string[] =>
  parts.flatMap((part) => (part.kind === 'safety' ? part.paragraphs.map(plainText) : []));

test('the signs to stop at stand first on the page of safety, and nowhere twice', () => {
  expect(safetyOf(booklet)[0]).toBe(says('pregnancy-signs'));
  expect(safetyOf(bare)).not.toContain(says('pregnancy-signs'));
  expect(tellBooklet(booklet).split(says('pregnancy-signs'))).toHaveLength(2);
});

test('what a caution that follows asks stands beside the exercise that asks for it alone', () => {
  const minding = booklet.parts.flatMap((part) =>
    part.kind === 'session'
      ? part.rows.filter((row) => JSON.stringify(row).includes(says('pregnancy-breath'))).map(({ row }) => row)
      : [],
  );
  expect([...new Set(minding)].sort()).toEqual(['feel', 'goblet-squat']);
  expect(JSON.stringify(bare)).not.toContain(says('pregnancy-breath'));
});

test('neither the fact nor its value is told', () => {
  const told = JSON.stringify(booklet);
  expect(told).not.toMatch(/twins|due 2027|pregnancy/i);
  expect(bannedIn(told).filter((found) => found.startsWith('screening') || found.startsWith('medicines'))).toEqual([]);
});
