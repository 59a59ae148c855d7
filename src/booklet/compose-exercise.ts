/** One exercise whole: everything a client needs to do it, in the order they need it. */
import type { ExercisePart } from '../model/booklet.js';
import { type Cue, type Exercise, liftsFromTheFloor, type Version } from '../model/exercise.js';
import { type Line, plainLine, plainText } from '../model/prose.js';
import { sentence } from '../words/rule-words.js';
import { unquoted } from '../words/unquoted.js';
import { pageOf } from './compose-easier.js';
import { composeWhy } from './compose-why.js';
import { itemsOf, mindedIn } from './minded.js';
import { begunLine, bookletLine, bookletLines, namedLine } from './own-words.js';
import { nameOf, type Subject } from './subject.js';

type Section = ExercisePart['sections'][number];
type Told = Section['lines'];

const strong = (text: string): Line => (text === '' ? [] : [{ text, strong: true }]);
const toldBy =
  (subject: Subject) =>
  (lines: readonly Line[]): Told =>
    lines.map((line) => ({ lead: [], text: begunLine(subject, line) }));

/** `reachable` are the exercises that have a page in this booklet. */
export function composeExercise(subject: Subject, exercise: Exercise, reachable: ReadonlySet<string>): ExercisePart {
  const { words } = exercise;
  const { booklet } = subject.speech.words;
  const why = composeWhy(subject, exercise);
  const only = onlyWay(subject, exercise);
  const told = toldBy(subject);
  const own = only !== undefined && leavesTheFloor(exercise, only);
  const lines: readonly (readonly [Section['name'], Told])[] = [
    ['parts', partsOf(subject, exercise)],
    ['set-up', own ? [] : told(words.setUp)],
    ['pick up', own ? [] : told(words.pickUp)],
    ['cues', [...mindedHere(subject, exercise), ...words.cues.map((cue) => cueLine(subject, cue))]],
    ['breath', told(words.breath)],
    ['put down', own ? [] : told(words.putDown)],
    ['faults', faultsOf(subject, exercise)],
    ['easier', easierOf(subject, exercise, reachable)],
    ['harder', harderOf(subject, exercise, reachable)],
    ['film', filmOf(subject, exercise)],
    ['partner', told(words.partner)],
  ];
  return {
    kind: 'exercise',
    id: exercise.id,
    title: exercise.name,
    description: [
      ...(only === undefined ? [] : [strong(booklet.onlyLike(plainText(only.say)))]),
      ...bookletLines(subject, words.description),
    ],
    sections: lines
      .filter(([, of]) => of.length > 0)
      .map(([name, of]) => ({ name, title: booklet.sections[name], lines: of })),
    stopTitle: booklet.stopTitle,
    stop: bookletLines(subject, words.stopIf),
    ...(why.length === 0 ? {} : { why }),
  };
}

/** The easier way of it in which this client does it wherever the plan has it; `undefined` where there is none such. */
function onlyWay(subject: Subject, exercise: Exercise): Version | undefined {
  const [way, ...others] = new Set(itemsOf(subject, exercise).map(({ done }) => done?.way));
  if (way === undefined || others.length > 0) return undefined;
  return exercise.words.easier.find((version) => `${exercise.id}#${keyOf(version)}` === way);
}

/** Done lying or kneeling as it is written, and not in this way: how to get there and up again is then of no use. */
const leavesTheFloor = (exercise: Exercise, { causes }: Version): boolean =>
  causes.includes('floor') && exercise.facts.onTheFloor && !liftsFromTheFloor(exercise);

/** What a combination is made of, each part with its page. */
function partsOf(subject: Subject, { facts }: Exercise): Told {
  if (facts.parts.length === 0) return [];
  const { partsDone } = subject.speech.words.booklet;
  return [
    ...facts.parts.map((id) => ({ lead: namedLine(subject, nameOf(subject, id)), text: [], exercise: id })),
    { lead: [], text: plainLine(partsDone[facts.partsDone]) },
  ];
}

/** What the coach asks to see of it. */
function filmOf({ client, speech, who }: Subject, { id, formerIds }: Exercise): Told {
  const { film } = client;
  if (film === undefined || ![id, ...formerIds].includes(film.exercise)) return [];
  return speech.words.booklet.film(who.coach, film.from).map((text) => ({ lead: [], text: plainLine(text) }));
}

/** What this client minds here, in the coach's words. */
function mindedHere(subject: Subject, exercise: Exercise): Told {
  const lead = strong(subject.speech.words.booklet.forYouLead);
  return mindedIn(subject, exercise).map((words) => ({ lead, text: plainLine(words) }));
}

const cueLine = (subject: Subject, { phase, line }: Cue): Told[number] => ({
  lead: namedLine(subject, begun(phase)),
  text: bookletLine(subject, line),
});

function begun(phase: string): string {
  const [first = ''] = Array.from(phase);
  return first.toUpperCase() + phase.slice(first.length);
}

function faultsOf(subject: Subject, { words }: Exercise): Told {
  return words.faults.map(({ see, say }) => {
    const spoken = unquoted(bookletLine(subject, say));
    const [open = '', close = ''] = subject.speech.words.booklet.quotes;
    return {
      lead: bookletLine(subject, see),
      text: spoken.length === 0 ? [] : [...plainLine(open), ...spoken, ...plainLine(close)],
    };
  });
}

/** The easier ways this client may do: those the plan gives, and for a page the plan only leads to, those it reaches. */
function easierOf(subject: Subject, exercise: Exercise, reachable: ReadonlySet<string>): Told {
  const given = easierGiven(subject, exercise);
  return exercise.words.easier
    .filter((version) => {
      const to = version.to;
      if (given !== undefined) return given.has(keyOf(version)) || given.has(plainText(version.say));
      return to.kind === 'way' || reachable.has(to.id);
    })
    .map((version) => versionLine(subject, version, subject.speech.words.causes(version.causes), reachable));
}

const keyOf = ({ to }: Version): string => (to.kind === 'exercise' ? to.id : to.slug);

/** By id, slug or words; `undefined` where the plan never plans this exercise. */
function easierGiven(subject: Subject, exercise: Exercise): ReadonlySet<string> | undefined {
  const items = itemsOf(subject, exercise);
  if (items.length === 0) return undefined;
  return new Set(
    items.flatMap(({ easier }) =>
      easier.flatMap((way) => [pageOf(way) ?? way.exercise?.split('#')[1] ?? way.say, way.say]),
    ),
  );
}

/** Only what this booklet itself leads to: a harder version nobody planned is not an invitation. */
function harderOf(subject: Subject, exercise: Exercise, reachable: ReadonlySet<string>): Told {
  return exercise.words.harder
    .filter(({ to }) => to.kind === 'exercise' && reachable.has(to.id))
    .map((version) => versionLine(subject, version, subject.speech.words.harderCauses(version.causes), reachable));
}

function versionLine(
  subject: Subject,
  { to, say }: Version,
  when: string,
  reachable: ReadonlySet<string>,
): Told[number] {
  const lead = to.kind === 'exercise' ? namedLine(subject, nameOf(subject, to.id)) : bookletLine(subject, say);
  const text = when === '' ? [] : plainLine(sentence(when));
  return { lead, text, ...(to.kind === 'exercise' && reachable.has(to.id) ? { exercise: to.id } : {}) };
}
