/** What a client minds in an exercise: of a caution only the words the coach wrote for the client, never what it is for. */
import type { Caution } from '../model/client.js';
import { dayOfIso } from '../model/day.js';
import { type Exercise, liftsFromTheFloor } from '../model/exercise.js';
import type { Item } from '../model/plan.js';
import { sentence } from '../words/rule-words.js';
import { clientSaying, sayToClient } from '../words/say-to-client.js';
import type { Subject } from './subject.js';

/** The rule that tells a client what to mind: said beside the exercise, and not among the reasons why. */
export const MINDED_RULE = 'caution-met';

/** Each as a sentence, each once: the coach's own in the order of the client's file, then those that follow from health. */
export function mindedIn(subject: Subject, exercise: Exercise): readonly string[] {
  const lifts = liftsFromTheFloor(exercise) && isLoaded(subject, exercise);
  const met = cautionsHeld(subject).filter(
    (caution) =>
      (lifts && caution.what === 'lifting from the floor') ||
      exercise.facts.asks.some(
        (ask) => ask.of === caution.what && (ask.phases.length === 0 || meets(ask.phases, caution.phases)),
      ),
  );
  const derived = subject.plan.inputs.standing.derived.filter(
    ({ what }) => exercise.facts.asks.some((ask) => ask.of === what) || (what === 'lifting from the floor' && lifts),
  );
  const said = saidOf(met, followed(subject, derived));
  return said.length > 0 ? said : toldOf(subject, exercise);
}

/** Where an exercise itself asks nothing to be minded: what the plan says of it, as of one that stands in for another. */
function toldOf(subject: Subject, exercise: Exercise): readonly string[] {
  const { speech, names } = subject;
  const told = itemsOf(subject, exercise)
    .flatMap(({ reasons }) => reasons)
    .filter(({ rule, audience }) => rule === MINDED_RULE && audience === 'client')
    .map((reason) => sayToClient(reason, speech, names))
    .filter((text) => text !== '');
  return [...new Set(told)];
}

/** Wherever the plan has this exercise, in order. */
export const itemsOf = ({ plan }: Subject, exercise: Exercise): readonly Item[] =>
  plan.weeks
    .flatMap(({ sessions }) => sessions.flatMap(({ groups }) => groups.flatMap((group) => group.items)))
    .filter((item) => item.exercise === exercise.id);

/** Done with something in the hands anywhere in this plan, as far as its own items say. */
const isLoaded = (subject: Subject, exercise: Exercise): boolean =>
  !exercise.facts.kit.unloaded ||
  itemsOf(subject, exercise).some(({ sets }) =>
    sets.some(({ load, choose }) => load !== undefined || choose !== undefined),
  );

/** Everything this client minds anywhere in the block. */
export const mindedAtAll = (subject: Subject): readonly string[] =>
  saidOf(cautionsHeld(subject), followed(subject, subject.plan.inputs.standing.derived));

/** Whether lifting from the floor, and putting down there, is minded anywhere in the block. */
export const mindsLifting = (subject: Subject): boolean =>
  [...cautionsHeld(subject), ...subject.plan.inputs.standing.derived].some(
    ({ what }) => what === 'lifting from the floor',
  );

/** Of a caution that follows from a fact of health: its rule's words for the client. */
const followed = ({ speech }: Subject, derived: readonly { readonly rule: string }[]): readonly string[] =>
  derived.map(({ rule }) => clientSaying(rule, speech)?.(() => '') ?? '').filter((says) => says !== '');

const meets = (asked: readonly string[], minded: readonly string[]): boolean =>
  minded.length === 0 || minded.some((phase) => asked.includes(phase));

const saidOf = (cautions: readonly Caution[], derived: readonly string[]): readonly string[] => [
  ...new Set([...cautions.flatMap(({ say }) => (say === undefined ? [] : [sentence(say)])), ...derived]),
];

/** Cautions that hold on some day of the block; a review date alone ends nothing. */
function cautionsHeld({ client, plan }: Subject): readonly Caution[] {
  const first = dayOfIso(plan.weeks[0]?.begins ?? plan.starts) ?? client.starts;
  const last = first + 7 * plan.weeks.length - 1;
  return client.cautions.filter(({ from, until }) => from <= last && (until === undefined || until >= first));
}
