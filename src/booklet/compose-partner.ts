/**
 * The page for whoever trains beside the client: what to count, to watch and to say, exercise by exercise. It is handed
 * over and counts as public, so that it is made of the library's words and first names alone: nothing of what the coach
 * wrote for this client, no load and no figure.
 */
import type { PartnerPart, Watched } from '../model/booklet.js';
import type { Exercise } from '../model/exercise.js';
import { firstNameOf } from '../model/first-name.js';
import type { Item } from '../model/plan.js';
import { plainLine } from '../model/prose.js';
import { unquoted } from '../words/unquoted.js';
import { stripTitle } from './compose-session.js';
import { begunLine, bookletLine, bookletLines } from './own-words.js';
import { type Strip, type Subject, standingsOf, stripsOf, WORK_GROUPS } from './subject.js';

/** `undefined` where nobody is on file who trains beside the client. */
export function composePartner(subject: Subject): PartnerPart | undefined {
  const { client, plan, speech, who } = subject;
  if (client.partnerName === undefined) return undefined;
  const { booklet } = speech.words;
  const strips = stripsOf(plan);
  const standing = strips.map((strip) => ({ title: stripTitle(subject, strip), items: itemsOf(strip) }));
  const ids = new Set(standing.flatMap(({ items }) => items.flatMap(exercisesIn)));
  const all = standing.flatMap(({ items }) => items);
  return {
    kind: 'partner',
    title: booklet.partnerTitle(client.partnerName),
    paragraphs: booklet.partner(firstNameOf(client.name)).map(plainLine),
    emergencyTitle: booklet.emergencyTitle,
    emergency: booklet.partnerEmergency.map(plainLine),
    call: booklet.call(who.emergencyNumber),
    stopTitle: booklet.partnerStop(firstNameOf(client.name)),
    sessions: standing.map(({ title, items }) => ({
      title,
      exercises: [...new Set(items.flatMap(exercisesIn))].flatMap((id) => subject.exercises.get(id)?.id ?? []),
    })),
    watched: [...ids].flatMap((id): readonly Watched[] => {
      const exercise = subject.exercises.get(id);
      return exercise === undefined
        ? []
        : [
            watchedIn(
              subject,
              exercise,
              all.filter((item) => exercisesIn(item).includes(id)),
            ),
          ];
    }),
  };
}

const itemsOf = (strip: Strip): readonly Item[] => standingsOf(strip, WORK_GROUPS).map(({ item }) => item);

/** What may be done of it: as planned, in a first set, otherwise, or by the answer to a feeler set. */
const exercisesIn = ({ exercise, sets }: Item): readonly string[] => [
  exercise,
  ...sets.flatMap((set) => [
    ...(set.exercise === undefined ? [] : [set.exercise]),
    ...(set.otherwise ?? []).map((one) => one.exercise),
    ...(set.choose ?? []).map((one) => one.exercise),
  ]),
];

function watchedIn(subject: Subject, { id, name, words }: Exercise, items: readonly Item[]): Watched {
  const { booklet } = subject.speech.words;
  const counted = new Set(items.flatMap(({ sets }) => sets.map(countedIn)));
  const kinds = (['reps', 'seconds', 'metres', 'rounds'] as const).filter((kind) => counted.has(kind));
  const [open, close] = booklet.quotes;
  return {
    exercise: id,
    name,
    count: [
      ...kinds.map((kind) => booklet.partnerCounts[kind]),
      ...(items.some(({ sides }) => sides === 'each') ? [booklet.partnerSides] : []),
    ],
    watch: words.partner.map((line) => begunLine(subject, line)),
    faults: words.faults.map(({ see, say }) => {
      const spoken = unquoted(bookletLine(subject, say));
      const told = spoken.length === 0 ? [] : [...plainLine(open), ...spoken, ...plainLine(close)];
      return { see: bookletLine(subject, see), say: told };
    }),
    stop: bookletLines(subject, words.stopIf),
  };
}

function countedIn({ seconds, metres, reps }: Item['sets'][number]): 'reps' | 'seconds' | 'metres' | 'rounds' {
  if (seconds !== undefined) return 'seconds';
  if (metres !== undefined) return 'metres';
  return reps === undefined ? 'rounds' : 'reps';
}
