/** Claims that compare weeks, or one exercise's place with another's in its session. */
import type { PlanSet } from '../../src/model/plan.js';
import type { Placed, Planned, Told } from './plan-of-case.js';
import { slugOf } from './read-library.js';

const isWork = ({ kind }: PlanSet): boolean => kind === 'work' || kind === 'trial';
const grams = ({ load }: Told): number => load?.grams ?? load?.step ?? 0;
const amount = ({ reps, seconds, metres }: Told): number => reps ?? seconds ?? metres ?? 0;

interface Work {
  readonly total: number;
  readonly heaviest: number;
  readonly most: number;
}

function workIn(told: readonly Told[], week: number): Work | undefined {
  const sets = told.filter(
    (one) => one.week === week && one.set !== undefined && (isWork(one.set) || one.spot === 'test'),
  );
  if (sets.length === 0) return undefined;
  return {
    total: sets.reduce((sum, one) => sum + amount(one), 0),
    heaviest: Math.max(...sets.map(grams)),
    most: Math.max(...sets.map(amount)),
  };
}

/** @param told what the claim's place holds, in every week; `undefined` where the words are of another kind. */
export function weekClaim(text: string, told: readonly Told[]): boolean | undefined {
  const pair = /^(more|less|the same) in week (\d)(?: than in| and) week (\d)$/.exec(text);
  if (pair) {
    const [one, other] = [workIn(told, Number(pair[2])), workIn(told, Number(pair[3]))];
    if (one === undefined || other === undefined) return false;
    if (pair[1] === 'more') return one.heaviest > other.heaviest || one.total > other.total;
    if (pair[1] === 'less') return one.heaviest <= other.heaviest && one.total < other.total;
    return one.heaviest === other.heaviest && one.most === other.most;
  }
  const least = /^no harder than in week (\d)$/.exec(text)?.[1];
  if (least === undefined) return undefined;
  const then = workIn(told, Number(least));
  const weeks = [...new Set(told.map(({ week }) => week))].map((week) => workIn(told, week));
  if (then === undefined) return false;
  return weeks.every((work) => work === undefined || (work.heaviest <= then.heaviest && work.most <= then.most));
}

/** Of an exercise in the order of each session it stands in; `undefined` where the words are of another kind. */
export function orderClaim(text: string, exercise: string, { plan, items }: Planned): boolean | undefined {
  const [, word, name] = /^(before|beside) (.+)$/.exec(text) ?? [];
  if (word === undefined && text !== 'last') return undefined;
  const other = slugOf(name ?? '');
  const sessions = (plan?.weeks ?? []).flatMap(({ sessions }) => sessions);
  const orders = sessions.map((session) => items.filter((placed) => placed.session === session && isMain(placed)));
  const at = (order: readonly Placed[], id: string) => order.findIndex(({ item }) => item.exercise === id);
  const both = orders.filter((order) => at(order, exercise) >= 0 && (text === 'last' || at(order, other) >= 0));
  const holds = (order: readonly Placed[]): boolean => {
    const [one, next] = [at(order, exercise), at(order, other)];
    if (text === 'last') return one === order.length - 1;
    if (word === 'before') return one < next;
    return Math.abs(one - next) === 1 && order[one]?.group === order[next]?.group;
  };
  return word === 'before' ? both.length > 0 && both.every(holds) : both.some(holds);
}

const isMain = ({ group }: Placed): boolean => group.kind === 'straight' || group.kind === 'circuit';
