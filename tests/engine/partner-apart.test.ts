/** Two who train together: planned apart, each coach's page says so, and neither page names the other. */
import { describe, expect, test } from 'vitest';
import { composeBooklet } from '../../src/booklet/compose-booklet.js';
import { planBlock } from '../../src/engine/plan-block.js';
import type { Client } from '../../src/model/client.js';
import { clientId } from '../../src/model/identity.js';
import type { Plan } from '../../src/model/plan.js';
import { sayReason } from '../../src/words/say-reason.js';
import { speechOf } from '../../src/words/speech.js';
import { PLACE } from './generate-exercises.js';
import { aClient, aLibrary, anExercise, aTest, kg, on, oneSession } from './make-block.js';

const tests = [aTest('squat', 10, { load: kg('16') })];
const library = aLibrary([anExercise('squat')], oneSession('squat'));
const [one, other] = [clientId('wren-holloway'), clientId('tam-holloway')];
const facts = (client: Partial<Client>): Client => aClient({ tests, ...client });

function planOf(client: Client, value?: number): Plan {
  const rulesOverridden =
    value === undefined ? [] : [{ rule: 'partner-apart', value, reason: 'they know', place: PLACE }];
  const made = planBlock({ library, client, today: on('2026-12-20'), edition: 0, rulesOverridden });
  expect(made.problems).toEqual([]);
  return made.value ?? expect.fail('withheld');
}

const alone = planOf(facts({ id: one }));
const together = planOf(facts({ id: one, partner: other }));

describe('two who train together', () => {
  test.each([
    ['the one', facts({ id: one, partner: other })],
    ['the other', facts({ id: other, partner: one })],
  ])('%s is told of, to the coach alone, once and for the whole block', (_, client) => {
    const told = planOf(client).findings.filter(({ rule }) => rule === 'partner-apart');
    expect(told.map(({ audience, weeks }) => [audience, weeks])).toEqual([['coach', [1, 2, 3, 4, 5, 6]]]);
    const [finding] = told;
    const said = finding === undefined ? '' : sayReason(finding.reason, 'coach', speechOf('en-GB'));
    expect(said).toContain('planned apart');
    expect(said).toContain('different times');
  });

  test('nothing else of the plan is other than for one who trains alone', () => {
    expect(together.weeks).toEqual(alone.weeks);
    expect(together.inputs).toEqual(alone.inputs);
    expect(together.findings.filter(({ rule }) => rule !== 'partner-apart')).toEqual(alone.findings);
  });

  test('the other’s name is on neither the plan nor the booklet', () => {
    const client = facts({ id: one, partner: other });
    const pages = JSON.stringify([together, composeBooklet({ library, client, plan: together })]);
    expect(pages).not.toMatch(/tam-holloway|tam holloway/i);
  });

  test('a coach who does not want to be told says 0', () => {
    const quiet = planOf(facts({ id: one, partner: other }), 0);
    expect(quiet.findings.map(({ rule }) => rule)).not.toContain('partner-apart');
  });
});
