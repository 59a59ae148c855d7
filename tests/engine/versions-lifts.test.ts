/**
 * Lifting from the floor with fragile bones: no lifting from or lowering to the floor (Giangregorio et al. 2014,
 * Osteoporos Int 25:821-835, table 4). And what no clearance opens, which none may be said to.
 */
import { describe, expect, test } from 'vitest';
import { planBlock } from '../../src/engine/plan-block.js';
import type { Client, Condition } from '../../src/model/client.js';
import type { Exercise } from '../../src/model/exercise.js';
import type { Plan } from '../../src/model/plan.js';
import { sayProblem } from '../../src/words/say-problem.js';
import { sayReason } from '../../src/words/say-reason.js';
import { speechOf } from '../../src/words/speech.js';
import { PLACE } from './generate-exercises.js';
import { aClient, aLibrary, aLink, anExercise, aSignOff, ask, aTest, bells, kg, on, oneSession } from './make-block.js';

const english = speechOf('en-GB');
const today = on('2026-12-20');
const made = (exercises: readonly Exercise[], client: Partial<Client>) =>
  planBlock({
    library: aLibrary(exercises, oneSession('squat')),
    client: aClient({ tests: [aTest('squat', 9, { load: kg('16') })], kit: bells('8', '12', '16'), ...client }),
    today,
    edition: 0,
  });
const planOf = (...given: Parameters<typeof made>): Plan => {
  const { value, problems } = made(...given);
  if (value === null) throw new Error(JSON.stringify(problems));
  return value;
};
const items = (plan: Plan) =>
  plan.weeks.flatMap(({ sessions }) => sessions.flatMap(({ groups }) => groups.flatMap((group) => group.items)));
const bones = (condition: Condition): Partial<Client> => ({
  health: { medicines: [], conditions: [condition], falls: 0 },
});

describe('a load from the floor', () => {
  const box = anExercise('box');
  const easier = [aLink('box', ['floor'])];
  const fromFloor = (facts: Parameters<typeof anExercise>[1] = {}) =>
    anExercise('squat', { onTheFloor: true, easier, ...facts });

  test('with a vertebral fracture gives way to one from a raised start, and is told so', () => {
    const plan = planOf([fromFloor(), box], bones('vertebral fracture'));
    expect([...new Set(items(plan).map(({ exercise }) => exercise))]).toEqual(['box']);
    expect([
      ...new Set(
        items(planOf([anExercise('squat', { easier }), box], bones('vertebral fracture'))).map(
          ({ exercise }) => exercise,
        ),
      ),
    ]).toEqual(['squat']);
    const refused = plan.findings.find(({ rule }) => rule === 'would-unlock');
    expect(JSON.stringify(refused?.reason.inputs)).toContain('lifting from the floor');
  });

  test('with nothing easier the client is withheld, and says what would open it', () => {
    const { value, problems } = made([fromFloor({ easier: [] })], bones('vertebral fracture'));
    expect(value).toBeNull();
    const hints = problems.map((problem) => sayProblem(problem).hint).join();
    expect(hints).toContain('for squat an easier version that is lifted from a chair or a box');
  });

  test('with low bone density it stays, with care: no gain, and words about lifting alone', () => {
    const told = (facts: Parameters<typeof anExercise>[1]) =>
      items(planOf([fromFloor(facts), box], bones('low bone density')))[0]
        ?.reasons.filter(({ rule, audience }) => rule === 'caution-met' && audience === 'client')
        .map((reason) => sayReason(reason, 'client', english));
    expect(told({})).toEqual(['Lift from a chair or a box, and put it down there.']);
    expect(told({ onTheFloor: false })).toEqual([]);
  });

  test('what may be done with empty hands is done so after a fracture', () => {
    const kit = { load: [{ kind: 'bell', count: 1, unequal: false }], unloaded: true, things: [] } as const;
    const loads = (client: Partial<Client>) =>
      items(planOf([fromFloor({ kit }), box], client)).flatMap(({ sets }) =>
        sets.flatMap(({ load, choose = [] }) => [load, ...choose.map((one) => one.load)]),
      );
    expect(loads(bones('vertebral fracture')).every((load) => load === undefined || load.grams === 0)).toBe(true);
    expect(loads({}).some((load) => (load?.grams ?? 0) > 0)).toBe(true);
  });
});

describe('what no clearance opens', () => {
  const swing = anExercise('squat', { way: 'swing', easier: [aLink('box', ['speed'])], asks: [ask('speed', 'much')] });
  const clearance = { by: 'Dr', date: on('2026-12-19'), for: 'vigorous' } as const;
  const asked = { medicines: [], conditions: [], falls: 0 };
  const saidFor = (client: Partial<Client>) => {
    const { value, problems } = made([swing, anExercise('box')], { signOffs: [aSignOff('squat')], ...client });
    const opens = (value?.findings ?? []).filter(({ rule }) => rule === 'would-unlock');
    const advice = problems.filter(({ code }) => code === 'moderate-only').map((problem) => sayProblem(problem).hint);
    return [...opens.map(({ reason }) => sayReason(reason, 'coach', english)), ...advice];
  };

  test.each<[string, Partial<Client>, RegExp]>([
    [
      'pregnancy',
      { health: { ...asked, pregnancy: { due: on('2027-06-01'), conditions: [], place: PLACE } } },
      /stays closed: not in this pregnancy/,
    ],
    [
      'a birth',
      {
        health: { ...asked, birth: { date: on('2026-11-24'), by: 'vaginal', checked: on('2026-12-19'), place: PLACE } },
      },
      /not in the first 12 weeks after the birth/,
    ],
    [
      'a high pressure',
      {
        health: {
          ...asked,
          bloodPressure: { systolic: 165, diastolic: 90, date: on('2026-12-18'), cuff: false, place: PLACE },
        },
      },
      /newer and lower reading/,
    ],
    ['a fracture', { health: { ...asked, conditions: ['vertebral fracture'] } }, /not after a vertebral fracture/],
  ])('%s', (_, client, said) => {
    const all = saidFor({ clearance, ...client });
    expect(all.join(' ')).toMatch(said);
    expect(all.join(' ')).not.toMatch(/with clearance|under clearance/);
  });

  test('known disease with regular exercise: clearance does', () => {
    const disease = {
      date: on('2026-12-01'),
      regularExercise: 'yes',
      knownDisease: 'yes',
      symptoms: 'no',
      place: PLACE,
    } as const;
    expect(saidFor({ screening: disease }).join(' ')).toMatch(/with clearance for vigorous effort/);
    const { clearance: given } = { clearance: { ...clearance } };
    const begins = saidFor({ screening: { ...disease, regularExercise: 'no' }, clearance: given });
    expect(begins.join(' ')).toMatch(/not before three months of regular exercise/);
  });
});

test('what was not asked is told with what is planned until then, each of its own', () => {
  const older = (health: Client['health']) => {
    const plan = planOf([anExercise('squat')], { birthYear: 1955, health });
    const [found] = plan.findings.filter(({ rule }) => rule === 'not-asked');
    return found === undefined ? '' : sayReason(found.reason, 'coach', english);
  };
  expect(older({ medicines: [], conditions: [] })).toBe(
    'Not asked yet: falls. Until you have, balance is planned as if there had been no fall.',
  );
  expect(older({ conditions: [], falls: 0 })).toContain('breath and words set the effort');
  expect(older({ medicines: [], falls: 0 })).toContain('nothing is changed for bones');
});
