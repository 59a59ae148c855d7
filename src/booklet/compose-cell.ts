/** One exercise in one week: its sets, the short lines beside them, and why. */
import type { BookletSet, Cell } from '../model/booklet.js';
import type { Side } from '../model/identity.js';
import type { Choice, Item, PlanSet } from '../model/plan.js';
import { sayItemEffort } from '../words/say-dose.js';
import { heldIn } from '../words/say-figures.js';
import { openDose } from '../words/say-found.js';
import { type SaidSet, sayPlanned } from '../words/say-planned.js';
import { sayToClient } from '../words/say-to-client.js';
import { composeChoice, composeGate, composeTest, composeTrial, type RowSoFar } from './compose-conditions.js';
import { choicesOf, sayOpenDose } from './find-load.js';
import { findingsIn } from './findings.js';
import { MINDED_RULE } from './minded.js';
import { nameOf, type Standing, type Subject } from './subject.js';

export function composeCell(subject: Subject, standing: Standing, row: RowSoFar): Cell {
  const { column, item } = standing;
  const { words } = subject.speech;
  const choices = choicesOf(item);
  const saying = (set: PlanSet): SaidSet => saySetOf(subject, set, choices);
  const counted = item.sets.filter(({ kind }) => kind !== 'warm-up');
  const shown = mainSets(item.sets);
  const gate = composeGate(subject, standing, row);
  const trial = composeTrial(subject, standing);
  const choose = composeChoice(subject, standing, row);
  const test = composeTest(subject, standing);
  return {
    week: column.week.number,
    exercise: item.exercise,
    version: item.exercise === row.usual ? '' : nameOf(subject, item.exercise),
    sets: item.sets.map((set) => composeSet(set, saying(set))),
    stack: stackOf(subject, shown, saying),
    tally: composeTally(subject, counted),
    spoken: spokenOf(subject, shown, counted, saying),
    effort: effortOf(subject, item, shown),
    tempo: words.sets.tempo[item.tempo],
    how: [...howOf(subject, item), ...ordersOf(subject, item), ...alone(subject, shown, saying)],
    ...(gate ? { gate } : {}),
    ...(trial ?? {}),
    ...(choose ? { choose } : {}),
    ...(test ? { test } : {}),
    why: whyOf(subject, standing).filter((says) => !row.saidBefore.includes(says)),
  };
}

/** Reasons that are to be done, not only understood: they stand beside the figures. */
const ORDERS: ReadonlySet<string> = new Set(['unequal-hands']);
/** Said beside the figures or the cues already. */
const SAID_ELSEWHERE: ReadonlySet<string> = new Set([...ORDERS, MINDED_RULE, 'way-unlocks']);

function ordersOf({ speech, names }: Subject, { exercise, reasons }: Item): readonly string[] {
  const told = reasons
    .filter(({ audience, rule }) => audience === 'client' && ORDERS.has(rule))
    .map((reason) => sayToClient(reason, speech, heldIn(exercise, names)));
  return [...new Set(told)].filter((says) => says !== '');
}

/** What the client is told of the other reasons, each once. */
export function whyOf(subject: Subject, { column, item }: Standing): readonly string[] {
  const told = item.reasons
    .filter(({ audience, rule }) => audience === 'client' && !SAID_ELSEWHERE.has(rule))
    .map((reason) => sayToClient(reason, subject.speech, heldIn(item.exercise, subject.names)));
  const found = findingsIn(subject, { session: column.session.id, row: item.row })
    .filter(({ week }) => week === column.week.number)
    .map(({ text }) => text);
  return [...new Set([...told, ...found])].filter((says) => says !== '');
}

/** How hard, by what is left and by the breath; a test says itself where it stops. */
function effortOf({ speech }: Subject, item: Item, shown: readonly PlanSet[]): string {
  const tested = shown.length > 0 && shown.every(({ kind }) => kind === 'test');
  const said = [
    tested ? '' : sayItemEffort(item, speech),
    item.talk === undefined ? '' : speech.words.sets.talk[item.talk],
  ];
  return said.filter((text) => text !== '').join(' ');
}

/** What the figures of a set do not say. */
function howOf({ speech }: Subject, { sets, done }: Item): readonly string[] {
  const { words } = speech;
  const work = sets.filter(({ kind }) => kind !== 'warm-up');
  const inTime = work.flatMap(({ kind, reps, seconds }) =>
    kind === 'test' || reps === undefined || seconds === undefined ? [] : [reps],
  );
  return [
    ...(done === undefined ? [] : [words.sets.onlyLike(done.say)]),
    ...(work.some(({ deadStop }) => deadStop === true) ? [words.sets.deadStop] : []),
    ...(work.some(({ steps }) => steps !== undefined) ? [words.sets.steps] : []),
    ...(work.some(({ then: next }) => next !== undefined) ? [words.sets.straightOn] : []),
    ...(inTime.length > 0 ? [words.sets.repsInTime(Math.min(...inTime))] : []),
    ...(work.some(({ load }) => load?.mode === 'assisted') ? [words.sets.helped] : []),
    ...(work.length > 0 && work.every(({ optional }) => optional === true) ? [words.sets.optional] : []),
  ];
}

function saySetOf(subject: Subject, set: PlanSet, choices: readonly Choice[]): SaidSet {
  const open = openDose(set, choices);
  if (open !== undefined) return sayOpenDose(subject, open);
  const { plan, speech } = subject;
  const said = sayPlanned(set, plan.inputs.kit, speech);
  if (set.exercise === undefined) return said;
  const named = (text: string): string => speech.words.sets.versionDose(nameOf(subject, set.exercise ?? ''), text);
  return { ...said, text: named(said.text), spoken: named(said.spoken) };
}

function composeSet(set: PlanSet, said: SaidSet): BookletSet {
  return {
    key: set.key,
    kind: set.kind,
    round: set.round,
    ...(set.side === undefined ? {} : { side: set.side }),
    ...(said.load === undefined ? {} : { load: said.load }),
    amount: said.amount,
    text: said.text,
    spoken: said.spoken,
  };
}

/** What stands large in the column: the work, or the feeler set where there is no work yet. */
function mainSets(sets: readonly PlanSet[]): readonly PlanSet[] {
  const work = sets.filter(({ kind }) => kind === 'work');
  return work.length > 0 ? work : sets.filter(({ kind }) => kind !== 'warm-up');
}

type Saying = (set: PlanSet) => SaidSet;

/** The lines of each different set, in the order done. A set that one side alone does is led by its side. */
function stackOf({ speech }: Subject, shown: readonly PlanSet[], saying: Saying): readonly string[] {
  return differentSets(shown, saying).flatMap(({ said, side }) =>
    side === undefined ? said.stack : [speech.words.labels[side], ...said.stack],
  );
}

/** How many of a side's sets the other side never does; nothing where the sides share none. */
function alone({ speech }: Subject, shown: readonly PlanSet[], saying: Saying): readonly string[] {
  const all = differentSets(shown, saying);
  if (all.every(({ side }) => side !== undefined)) return [];
  return all.flatMap(({ said, side }) => {
    if (side === undefined) return [];
    const own = shown.filter((set) => set.side === side);
    const count = own.filter((set) => saying(set).text === said.text).length;
    return [speech.words.sets.sideAlone(speech.words.labels[side], count, own.length, said.text)];
  });
}

/** `16 kg × 8, 3 sets`; where one side has another load, each with its side. */
function spokenOf({ speech }: Subject, shown: readonly PlanSet[], counted: readonly PlanSet[], saying: Saying): string {
  const { doses, sides } = speech.words;
  const said = differentSets(shown, saying).map(({ said: { text }, side }) =>
    side === undefined ? text : doses.ofSide(sides[side], text),
  );
  return doses.withSets(said.join(', '), counted.length / sidesIn(counted).length);
}

/** Each different set once, in the order done; with its side where the other side never does it. */
function differentSets(
  shown: readonly PlanSet[],
  saying: Saying,
): readonly { readonly said: SaidSet; readonly side?: Side }[] {
  const both = sidesIn(shown).length > 1;
  const alike = new Map<string, { readonly said: SaidSet; readonly sides: Set<Side> }>();
  for (const set of shown) {
    const said = saying(set);
    const one = alike.get(said.text) ?? { said, sides: new Set<Side>() };
    if (set.side !== undefined) one.sides.add(set.side);
    alike.set(said.text, one);
  }
  return [...alike.values()].map(({ said, sides }) => {
    const [side] = sides;
    return both && sides.size === 1 && side !== undefined ? { said, side } : { said };
  });
}

function sidesIn(sets: readonly PlanSet[]): readonly (PlanSet['side'] | 'both')[] {
  const sides = [...new Set(sets.map(({ side }) => side ?? 'both'))];
  return sides.length === 0 ? ['both'] : sides;
}

/** Weaker side first, as the sets come. */
function composeTally({ speech }: Subject, counted: readonly PlanSet[]): Cell['tally'] {
  const { labels } = speech.words;
  return sidesIn(counted).map((side) => ({
    label: side === 'left' || side === 'right' ? labels[side] : '',
    strokes: counted.filter((set) => (set.side ?? 'both') === side).length,
  }));
}
