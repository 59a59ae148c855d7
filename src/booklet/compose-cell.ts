/** One exercise in one week: its sets, the short lines beside them, and why. */
import type { BookletSet, Cell, LoadText } from '../model/booklet.js';
import type { Choice, OtherwiseSet, PlanSet } from '../model/plan.js';
import { sayAmount, sayItemEffort, saySet, saySetAloud, stackSet } from '../words/say-dose.js';
import { openDose } from '../words/say-found.js';
import { isLoaded, sayLoad, sayLoadText } from '../words/say-load.js';
import { sayReason } from '../words/say-reason.js';
import { choicesOf, type SaidSet, sayOpenDose } from './find-load.js';
import { nameOf, type Standing, type Subject } from './subject.js';

/** What a cell needs to know of the row it stands in. */
export interface RowSoFar {
  /** The exercise the row is headed with. */
  readonly usual: string;
  /** The latest week up to this one in which a gate stands. */
  readonly gateWeek?: number;
  /** The latest week up to this one with a feeler set. */
  readonly feelerWeek?: number;
  /** Sentences already said the week before. */
  readonly saidBefore: readonly string[];
}

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
  return {
    week: column.week.number,
    exercise: item.exercise,
    version: item.exercise === row.usual ? '' : nameOf(subject, item.exercise),
    sets: item.sets.map((set) => composeSet(set, saying(set))),
    stack: distinct(shown.map((set) => saying(set).stack)),
    tally: composeTally(subject, counted),
    spoken: words.doses.withSets(
      [...new Set(shown.map((set) => saying(set).text))].join(', '),
      counted.length / sidesIn(counted).length,
    ),
    effort: sayItemEffort(item, subject.speech),
    tempo: words.sets.tempo[item.tempo],
    ...(gate ? { gate } : {}),
    ...(trial ?? {}),
    ...(choose ? { choose } : {}),
    why: whyOf(subject, standing).filter((says) => !row.saidBefore.includes(says)),
  };
}

/** What the client is told of the reasons, each once. */
export function whyOf(subject: Subject, { item }: Standing): readonly string[] {
  const told = item.reasons
    .filter(({ audience }) => audience === 'client')
    .map((reason) => sayReason(reason, 'client', subject.speech, subject.names));
  return [...new Set(told)].filter((says) => says !== '');
}

const loadOf = ({ plan, speech }: Subject, set: Pick<PlanSet, 'load'>): LoadText =>
  sayLoad(set.load, plan.inputs.kit, speech);

function saySetOf(subject: Subject, set: PlanSet, choices: readonly Choice[]): SaidSet {
  const open = openDose(set, choices);
  if (open !== undefined) return sayOpenDose(subject, open);
  const { speech } = subject;
  const load = loadOf(subject, set);
  const named = (said: string): string =>
    set.exercise === undefined ? said : speech.words.sets.versionDose(nameOf(subject, set.exercise), said);
  return {
    ...(isLoaded(load) ? { load } : {}),
    amount: sayAmount(set, speech),
    text: named(saySet(load, set, speech)),
    spoken: named(saySetAloud(load, set, speech)),
    stack: stackSet(load, set, speech),
  };
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

/** The lines of each different set, in the order done. */
const distinct = (stacks: readonly (readonly string[])[]): readonly string[] =>
  [...new Map(stacks.map((stack) => [stack.join('\n'), stack])).values()].flat();

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

function composeGate(subject: Subject, { column, item }: Standing, row: RowSoFar): Cell['gate'] {
  const { speech } = subject;
  const { sets: words } = speech.words;
  const otherwise = item.sets.flatMap((set) => set.otherwise ?? [])[0];
  if (otherwise === undefined) return undefined;
  const needs = item.sets.flatMap(({ gate }) => gate?.needs ?? [])[0];
  const dose = (of: Pick<PlanSet, 'load' | 'reps'> & { readonly exercise: string }, other: string): string => {
    const said = saySet(loadOf(subject, of), of, speech);
    return of.exercise === other ? said : words.versionDose(nameOf(subject, of.exercise), said);
  };
  return {
    needs:
      needs === undefined
        ? words.gateStill(row.gateWeek ?? column.week.number)
        : words.gateNeeds(
            dose(needs, row.usual),
            needs.weeks.length === 0 ? '' : words.weekList(needs.weeks),
            Math.ceil((needs.reserve ?? 0) / 10),
          ),
    otherwise: words.otherwise(sayOtherwise(subject, otherwise, item.exercise)),
    otherwiseStack: stackSet(loadOf(subject, otherwise), otherwise, speech),
  };
}

/** `16 kg × 10, 3 sets`, with the version and the tempo where they are not the week's own. */
function sayOtherwise(subject: Subject, otherwise: OtherwiseSet, exercise: string): string {
  const { words } = subject.speech;
  const said = words.doses.withSets(saySet(loadOf(subject, otherwise), otherwise, subject.speech), otherwise.sets);
  const named =
    otherwise.exercise === exercise ? said : words.sets.versionDose(nameOf(subject, otherwise.exercise), said);
  const tempo = words.sets.tempo[otherwise.tempo];
  return tempo === '' ? named : `${named}, ${tempo}`;
}

function composeTrial(subject: Subject, { item }: Standing): Required<Pick<Cell, 'trial' | 'trialStack'>> | undefined {
  const trial = item.sets.find(({ kind }) => kind === 'trial');
  if (trial === undefined) return undefined;
  const { speech } = subject;
  const load = loadOf(subject, trial);
  const stack = stackSet(load, trial, speech);
  const other = trial.exercise !== undefined && trial.exercise !== item.exercise;
  if (isLoaded(load) && !other)
    return { trial: speech.words.sets.tryLoad(sayLoadText(load), sayAmount(trial, speech)), trialStack: stack };
  const name = nameOf(subject, trial.exercise ?? item.exercise);
  return {
    trial: speech.words.sets.tryVersion(name, saySet(load, trial, speech)),
    trialStack: other ? [name, ...stack] : stack,
  };
}

function composeChoice(subject: Subject, { column, item }: Standing, row: RowSoFar): Cell['choose'] {
  const choices = choicesOf(item);
  if (choices.length === 0) return undefined;
  const { speech } = subject;
  const { sets: words } = speech.words;
  const feeler = item.sets.find(({ kind }) => kind === 'feeler');
  return {
    ...(feeler === undefined
      ? { intro: words.feelerAgain(row.feelerWeek ?? column.week.number) }
      : {
          intro: words.feelerIntro(saySet(loadOf(subject, feeler), feeler, speech), feeler.side !== undefined),
          note: words.feelerNote(column.week.number),
        }),
    rows: inLines(
      choices.map((choice) => {
        const dose = saySet(loadOf(subject, choice), choice, speech);
        const use =
          choice.exercise === item.exercise ? dose : words.versionDose(nameOf(subject, choice.exercise), dose);
        return { ...choice.left, use };
      }),
    ).map(({ min, max, use }) => ({ felt: words.felt(min, max), use })),
  };
}

interface TableLine {
  readonly min: number;
  readonly max: number;
  readonly use: string;
}

/** Neighbours that lead to the same set are one line. */
function inLines(choices: readonly TableLine[]): readonly TableLine[] {
  const lines: TableLine[] = [];
  for (const choice of choices) {
    const before = lines.at(-1);
    if (before === undefined || before.use !== choice.use) lines.push(choice);
    else lines[lines.length - 1] = mergedLine(before, choice);
  }
  return lines;
}

const mergedLine = (a: TableLine, b: TableLine): TableLine => ({
  min: Math.min(a.min, b.min),
  max: Math.max(a.max, b.max),
  use: a.use,
});
