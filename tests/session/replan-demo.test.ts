/** The demo's own clients after four sessions done as planned: no row changes its exercise, and the phone says what a new edition says. */
import { describe, expect, test } from 'vitest';
import { planBlock } from '../../src/engine/plan-block.js';
import { addDays, dayOfIso, isoOfDay } from '../../src/model/day.js';
import type { Item, Plan, PlanSession } from '../../src/model/plan.js';
import { gatherHistory } from '../../src/session/gather-history.js';
import { replan } from '../../src/session/replan.js';
import { sayPlan } from '../../src/words/say-plan.js';
import { readDemo } from '../studio/demo-library.js';
import { aLog, anEdition, doAsPlanned } from './make-marks.js';

const demo = await readDemo();
const today = dayOfIso('2026-11-24') ?? expect.fail();
const planned = demo.clients.flatMap((one) => {
  const client = { ...one, replanning: 'within bounds' } as const;
  const { value } = planBlock({ library: demo.library, client, today, edition: 1 });
  return value === null ? [] : [{ client, plan: sayPlan(value) }];
});

const sessionsOf = ({ weeks }: Plan): readonly PlanSession[] => weeks.flatMap(({ sessions }) => sessions);
const itemsOf = ({ groups }: PlanSession): readonly Item[] =>
  groups.flatMap(({ kind, items }) => (kind === 'straight' || kind === 'circuit' ? items : []));

/** Of a feeler set the line for a few good reps left, and the work that it leads to. */
function doneOf(plan: Plan, occurrence: number) {
  const found = sessionsOf(plan).find((one) => one.occurrence === occurrence);
  const lines = new Map(
    (found === undefined ? [] : itemsOf(found)).map((item) => {
      const own = item.sets.flatMap(({ choose }) => choose ?? []).filter(({ exercise }) => exercise === item.exercise);
      return [item.row, own.find(({ left }) => left.min >= 4)];
    }),
  );
  return doAsPlanned(plan, occurrence, {
    edition: 1,
    but: (set, row) => {
      const line = lines.get(row);
      if (line === undefined || set.kind !== 'work') return {};
      const { exercise, reps, load } = line;
      return { exercise, reps, asPlanned: false, ...(load === undefined ? {} : { load }) };
    },
  });
}

const sayItem = ({ exercise, tempo, sets }: Pick<Item, 'exercise' | 'tempo' | 'sets'>): string =>
  [
    exercise,
    tempo,
    ...sets.map(({ kind, reps, seconds, metres, load }) => `${kind} ${reps ?? seconds ?? metres} ${load?.label ?? ''}`),
  ].join(', ');
const earnsFirst = ({ sets }: Item): boolean =>
  sets.some(
    ({ kind, gate, otherwise, choose }) =>
      kind === 'trial' || kind === 'feeler' || (gate ?? otherwise ?? choose) !== undefined,
  );

/** The stronger side does some sets with a bell of its own, which the phone leaves as they are printed. */
const keepsOwnBell = ({ sets }: Item): boolean =>
  new Set(sets.flatMap(({ kind, load }) => (kind === 'work' ? [load?.grams] : []))).size > 1;

describe.each(planned.map(({ client, plan }) => ({ name: client.id, client, plan })))('$name', ({ client, plan }) => {
  const events = sessionsOf(plan)
    .slice(0, 4)
    .flatMap(({ occurrence }) => doneOf(plan, occurrence));
  const day = addDays(dayOfIso(sessionsOf(plan)[3]?.date ?? '') ?? expect.fail(), 1);
  const history = gatherHistory([anEdition(plan, 1)], [aLog(events)]).value;
  const again = planBlock({ library: demo.library, client, today: day, edition: 2, history });
  const errors = again.problems.filter(({ severity }) => severity === 'error').map(({ code, data }) => [code, data]);
  const fresh = again.value ?? expect.fail(`${client.id} is withheld: ${JSON.stringify(errors)}`);
  const open = sessionsOf(fresh).filter(({ occurrence }) => occurrence > 4);
  const pairs = open.flatMap((session) => {
    const paper = sessionsOf(plan).find(({ occurrence }) => occurrence === session.occurrence);
    return (paper === undefined ? [] : itemsOf(paper)).map((item) => {
      return { occurrence: session.occurrence, item, again: itemsOf(session).find(({ row }) => row === item.row) };
    });
  });

  test('no row is done with another exercise for having been done as planned', () => {
    const other = pairs.filter(
      ({ item, again }) => !earnsFirst(item) && again !== undefined && again.exercise !== item.exercise,
    );
    expect(other.map(({ occurrence, item, again }) => [occurrence, item.row, item.exercise, again?.exercise])).toEqual(
      [],
    );
  });

  test('the phone says what a new edition says, within its bounds, where nothing must first be earned or found', () => {
    const phone = replan(plan, events, isoOfDay(day));
    if (phone.kind !== 'planned') return expect(plan.inputs.standing.moderate).toBe(true);
    const sure = pairs.filter(({ item, again }) => !earnsFirst(item) && (again === undefined || !earnsFirst(again)));
    const differs = sure.flatMap(({ occurrence, item, again }) => {
      const own = phone.changed.find((one) => one.occurrence === occurrence && one.row === item.row);
      if ((own?.bounds ?? []).length > 0 || keepsOwnBell(item)) return [];
      const here = sayItem(own === undefined ? item : { ...own, sets: own.sets.flatMap(({ set }) => set ?? []) });
      return again === undefined || here === sayItem(again) ? [] : [[occurrence, item.row, here, sayItem(again)]];
    });
    expect(differs).toEqual([]);
  });
});
