/** Claims about single sets and items: what each word of the vocabulary asks of one of them. */
import type { PlanLoad, PlanSet } from '../../src/model/plan.js';
import type { Placed, Told } from './plan-of-case.js';

export type SetClaim = (told: Told) => boolean;
export type ItemClaim = (placed: Placed) => boolean;

const grams = (load: PlanLoad | undefined): number => load?.grams ?? 0;
const between = (word: string | undefined, bound: number, amount: number | undefined): boolean => {
  if (amount === undefined) return false;
  return word === 'at most' ? amount <= bound : word === 'at least' ? amount >= bound : amount === bound;
};

/** By the claim's words; `undefined` where they are of another kind. */
export function setClaim(text: string): SetClaim | undefined {
  const amount = /^(at most|at least|exactly) ([\d.]+) (reps|s|m|left)$/.exec(text);
  if (amount) {
    const [, word, figure, unit] = amount;
    const bound = Number(figure);
    if (unit === 'reps') return ({ reps }) => between(word, bound, reps);
    if (unit === 's') return ({ seconds }) => between(word, bound, seconds);
    if (unit === 'm') return ({ metres }) => between(word, bound, metres);
    return ({ reserve }) => between(word, 10 * bound, reserve);
  }
  const mass = /^with (?:(at most|at least) )?([\d.]+) kg$/.exec(text);
  if (mass) return ({ load }) => between(mass[1], 1000 * Number(mass[2]), grams(load));
  const pieces = /^with ([\d.]+) \+ ([\d.]+) kg$/.exec(text);
  if (pieces) {
    const wanted = [Number(pieces[1]), Number(pieces[2])].sort((a, b) => a - b).join();
    return ({ load }) =>
      (load?.pieces ?? [])
        .map((piece) => piece.grams / 1000)
        .sort((a, b) => a - b)
        .join() === wanted;
  }
  const band = /^with (\w+) band$/.exec(text)?.[1];
  if (band !== undefined) return ({ load }) => load?.band === band;
  const then = /^then (?:with ([\d.]+) kg|at most (\d+) reps)$/.exec(text);
  if (then) return ({ set }) => thenHolds(set, then[1], then[2]);
  const stop = /^stops with (\d) left$/.exec(text)?.[1];
  if (stop !== undefined) return ({ set }) => set?.stopAt?.reserve === 10 * Number(stop);
  const steps = /^steps ([\d-]+)$/.exec(text)?.[1];
  if (steps !== undefined) return ({ set }) => set?.steps?.join('-') === steps;
  const every = /^every (\d+) s$/.exec(text)?.[1];
  if (every !== undefined) return ({ group }) => group.everySeconds === Number(every);
  switch (text) {
    case 'there':
      return () => true;
    case 'without a load':
      return ({ load }) => load === undefined;
    case 'from a dead stop':
      return ({ set }) => set?.deadStop === true;
    case 'with a gate':
      return ({ set }) => set?.gate !== undefined;
    case 'a trial':
      return ({ set }) => set?.kind === 'trial';
    default:
      return undefined;
  }
}

function thenHolds(set: PlanSet | undefined, kg: string | undefined, most: string | undefined): boolean {
  if (set?.then === undefined) return false;
  return kg === undefined ? set.then.reps <= Number(most) : grams(set.then.load) === 1000 * Number(kg);
}

const isWork = ({ kind }: PlanSet): boolean => kind === 'work' || kind === 'trial';

export function itemClaim(text: string): ItemClaim | undefined {
  const sets = /^(?:(at most|at least) )?(\d+) sets$/.exec(text);
  if (sets) return ({ item }) => between(sets[1], Number(sets[2]), item.sets.filter(isWork).length);
  const rest = /^rest at least (\d+) s$/.exec(text)?.[1];
  if (rest !== undefined) return ({ item }) => item.restSeconds >= Number(rest);
  const talk = /^talk in (sentences|phrases)$/.exec(text)?.[1];
  if (talk !== undefined) return ({ item }) => item.talk === talk;
  const first = /^(left|right) first$/.exec(text)?.[1];
  if (first !== undefined) return ({ item }) => item.sets.find(isWork)?.side === first;
  if (text !== 'both sides the same') return undefined;
  return ({ item }) =>
    sideText(item.sets, 'left') === sideText(item.sets, 'right') && sideText(item.sets, 'left') !== '';
}

const sideText = (sets: readonly PlanSet[], side: string): string =>
  sets
    .filter((set) => isWork(set) && set.side === side)
    .map(({ reps, seconds, metres, load, kind }) => [kind, reps, seconds, metres, load?.label].join('/'))
    .join();
