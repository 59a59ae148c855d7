/** What hangs on a cell: a step that must be earned, a first set to try, a feeler set's table, a test. */
import type { Cell } from '../model/booklet.js';
import type { GateNeeds, OtherwiseSet, PlanSet } from '../model/plan.js';
import { sayAmount, saySet } from '../words/say-dose.js';
import { isLoaded, sayLoad, sayLoadText } from '../words/say-load.js';
import { sayPlanned } from '../words/say-planned.js';
import { choicesOf } from './find-load.js';
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

const loadOf = ({ plan, speech }: Subject, set: Pick<PlanSet, 'load'>) => sayLoad(set.load, plan.inputs.kit, speech);

export function composeGate(subject: Subject, { column, item }: Standing, row: RowSoFar): Cell['gate'] {
  const { speech } = subject;
  const { sets: words } = speech.words;
  const otherwise = item.sets.flatMap((set) => set.otherwise ?? [])[0];
  if (otherwise === undefined) return undefined;
  const needs = item.sets.flatMap(({ gate }) => gate?.needs ?? [])[0];
  const dose = (of: GateNeeds, other: string): string => {
    const said = sayPlanned(of, subject.plan.inputs.kit, speech).text;
    return of.exercise === other ? said : words.versionDose(nameOf(subject, of.exercise), said);
  };
  return {
    needs:
      needs === undefined
        ? words.gateStill(row.gateWeek ?? column.week.number)
        : words.gateNeeds(
            dose(needs, row.usual),
            needs.weeks.length === 0 ? '' : words.weekList(needs.weeks),
            needs.reserve === undefined ? undefined : Math.ceil(needs.reserve / 10),
          ),
    otherwise: words.otherwise(sayOtherwise(subject, otherwise, item.exercise)),
    otherwiseStack: sayPlanned(otherwise, subject.plan.inputs.kit, speech).stack,
  };
}

/** `16 kg × 10, 3 sets`, with the version and the tempo where they are not the week's own. */
function sayOtherwise(subject: Subject, otherwise: OtherwiseSet, exercise: string): string {
  const { words } = subject.speech;
  const said = words.doses.withSets(
    sayPlanned(otherwise, subject.plan.inputs.kit, subject.speech).text,
    otherwise.sets,
  );
  const named =
    otherwise.exercise === exercise ? said : words.sets.versionDose(nameOf(subject, otherwise.exercise), said);
  const tempo = words.sets.tempo[otherwise.tempo];
  return tempo === '' ? named : `${named}, ${tempo}`;
}

export function composeTrial(
  subject: Subject,
  { item }: Standing,
): Required<Pick<Cell, 'trial' | 'trialStack'>> | undefined {
  const trial = item.sets.find(({ kind }) => kind === 'trial');
  if (trial === undefined) return undefined;
  const { speech } = subject;
  const load = loadOf(subject, trial);
  const { text, stack } = sayPlanned(trial, subject.plan.inputs.kit, speech);
  const other = trial.exercise !== undefined && trial.exercise !== item.exercise;
  if (isLoaded(load) && !other)
    return { trial: speech.words.sets.tryLoad(sayLoadText(load), sayAmount(trial, speech)), trialStack: stack };
  const name = nameOf(subject, trial.exercise ?? item.exercise);
  return {
    trial: speech.words.sets.tryVersion(name, text),
    trialStack: other ? [name, ...stack] : stack,
  };
}

export function composeChoice(subject: Subject, { column, item }: Standing, row: RowSoFar): Cell['choose'] {
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
    ).map(({ min, max, use }) => ({ felt: words.felt(min, max), left: { min, max }, use })),
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

/** A test set is the same on either side; its number is written down for each. */
export function composeTest(subject: Subject, { column, item }: Standing): Cell['test'] {
  const tests = item.sets.filter(({ kind }) => kind === 'test');
  const first = tests[0];
  if (first === undefined) return undefined;
  const { speech, plan } = subject;
  const { sets: words } = speech.words;
  const held = first.seconds !== undefined && item.way === 'hold';
  const notes = tests.map(({ side }) =>
    words.testNote(column.week.number, side === undefined ? '' : speech.words.sides[side], held),
  );
  const worked = item.sets.some(({ kind }) => kind === 'work' || kind === 'feeler');
  const { stack } = sayPlanned(first, plan.inputs.kit, speech);
  return { says: saysOf(first, held, subject), notes: [...new Set(notes)], stack: worked ? stack : [] };
}

/** Reps are the most the test may go to. */
function saysOf({ seconds, stopAt, reps }: PlanSet, held: boolean, { speech }: Subject): string {
  const { sets } = speech.words;
  const left = stopAt === undefined ? undefined : Math.ceil(stopAt.reserve / 10);
  if (seconds !== undefined) return held ? sets.testHeld(seconds) : sets.testInTime(seconds);
  return left === undefined ? sets.testAll : sets.testStop(left, reps);
}
