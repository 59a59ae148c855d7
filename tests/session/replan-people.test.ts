/** The simulated people after every session: what the phone lays down, held against the edition a coach would issue. */
import { describe, expect, test } from 'vitest';
import { linkLibrary, planBlock } from '../../src/engine/plan-block.js';
import { addDays, dayOfIso, isoOfDay } from '../../src/model/day.js';
import type { Edition } from '../../src/model/edition.js';
import { readSetKey } from '../../src/model/identity.js';
import type { LogEvent } from '../../src/model/log.js';
import type { PlanSet } from '../../src/model/plan.js';
import { gatherHistory } from '../../src/session/gather-history.js';
import { replan } from '../../src/session/replan.js';
import { DEEP } from '../deep.js';
import { PEOPLE, type Person } from '../simulate/people.js';
import { runBlocks } from '../simulate/run-blocks.js';
import { sessionsOf } from '../simulate/simulate.js';
import { aLog, anEdition } from './make-marks.js';

const occurrenceOf = (event: LogEvent): number | undefined =>
  event.kind === 'set' ? readSetKey(event.key)?.occurrence : 'occurrence' in event ? event.occurrence : undefined;

const heaviest = (sets: readonly PlanSet[]): number =>
  Math.max(0, ...sets.flatMap(({ kind, load }) => (kind === 'work' || kind === 'trial' ? (load?.grams ?? 0) : [])));

interface Compared {
  readonly at: string;
  readonly laid: number;
  readonly fresh: number;
}

function compare(somebody: Person, seed: number): readonly Compared[] {
  const person: Person = { ...somebody, client: { ...somebody.client, replanning: 'within bounds' } };
  const linked = linkLibrary(person.library.exercises);
  const editions: Edition[] = [];
  const before: LogEvent[] = [];
  return runBlocks(person, seed).weeks.flatMap((week) => {
    if (editions.every(({ n }) => n !== week.edition)) editions.push(anEdition(week.plan, week.edition));
    const ofBlock = week.marked.slice(0, week.marked.length - week.events.length);
    const found = week.done.flatMap(({ occurrence }): readonly Compared[] => {
      const until = week.events.findLastIndex((event) => occurrenceOf(event) === occurrence);
      const own = week.events.slice(0, until + 1);
      const today = addDays(dayOfIso(own.at(-1)?.at.slice(0, 10) ?? '') ?? expect.fail(), 1);
      const { value: history } = gatherHistory(editions, [aLog([...before, ...own])]);
      const { library } = person;
      // What the coach writes on that Sunday is not written yet.
      const client = { ...week.client, observations: week.client.observations.filter(({ date }) => date <= today) };
      const edition = week.edition + 1;
      const { value: fresh, problems } = planBlock({ library, client, today, edition, linked, history });
      const again = replan(week.plan, [...ofBlock, ...own], isoOfDay(today));
      if (again.kind !== 'planned') return [];
      const sessions = new Map(
        sessionsOf(fresh ?? expect.fail(JSON.stringify(problems))).map((one) => [one.occurrence, one]),
      );
      return again.changed.flatMap((laid) => {
        const items = sessions.get(laid.occurrence)?.groups.flatMap((group) => group.items) ?? [];
        // Of other exercises the loads say nothing of one another; a row may be cut for time anew.
        const item = items.find(({ row, exercise }) => row === laid.row && exercise === laid.exercise);
        if (item === undefined) return [];
        const at = `week ${week.number} after session ${occurrence}: ${laid.row} in session ${laid.occurrence}`;
        return [{ at, laid: heaviest(laid.sets.flatMap(({ set }) => set ?? [])), fresh: heaviest(item.sets) }];
      });
    });
    before.push(...week.events);
    return found;
  });
}

describe.each(PEOPLE)('$name', (person) => {
  test.each(DEEP ? [1, 2] : [1])(
    'is never laid a heavier load than a fresh edition from the same marks would, seed %i',
    (seed) => {
      const compared = compare(person, seed);
      expect(compared.length).toBeGreaterThan(0);
      expect(compared.filter(({ laid, fresh }) => laid > fresh)).toEqual([]);
    },
  );
});
