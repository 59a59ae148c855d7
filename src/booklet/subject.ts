/** What every part of a booklet is composed from: one client's plan, the studio's library, and how this client is spoken to. */
import type { Client } from '../model/client.js';
import type { Exercise } from '../model/exercise.js';
import { primaryLanguage } from '../model/languages.js';
import type { Group, Item, Plan, PlanSession, Week } from '../model/plan.js';
import { plainText } from '../model/prose.js';
import type { Library } from '../model/studio.js';
import type { WhoIsWho } from '../words/booklet-words.js';
import { sayFullDate } from '../words/say-date.js';
import type { Names } from '../words/say-figures.js';
import { exercisesIn, namesAmong } from '../words/say-names.js';
import { namesIn } from '../words/say-plan.js';
import type { Speech } from '../words/speech.js';

export interface Subject {
  readonly library: Library;
  readonly client: Client;
  readonly plan: Plan;
  readonly speech: Speech;
  /** The language of the exercises (BCP 47), where it is not the one the client is spoken to in. */
  readonly foreign: string | undefined;
  /** By id, former ids included. */
  readonly exercises: ReadonlyMap<string, Exercise>;
  readonly who: WhoIsWho;
  /** Names as they stand inside a sentence. */
  readonly names: Names;
}

export function subjectOf(of: Pick<Subject, 'library' | 'client' | 'plan' | 'speech'>): Subject {
  const { library, client, plan, speech } = of;
  const exercises = new Map<string, Exercise>();
  for (const exercise of library.exercises) for (const former of exercise.formerIds) exercises.set(former, exercise);
  for (const exercise of library.exercises) exercises.set(exercise.id, exercise);
  const plain = namesIn(plan);
  const called = namesAmong(exercisesIn(plan), (id) => exercises.get(id)?.name ?? plain.exercise(id), speech);
  return {
    library,
    client,
    plan,
    speech,
    foreign:
      primaryLanguage(library.studio.language) === primaryLanguage(speech.language)
        ? undefined
        : library.studio.language,
    exercises,
    who: {
      client: client.name,
      coach: library.studio.coach,
      emergencyNumber: library.studio.emergencyNumber,
      date: sayFullDate(plan.today, speech),
    },
    names: {
      // In a line that runs the other way a name is read on its own.
      exercise: (id) => speech.hold(called(id)),
      load: plain.load,
    },
  };
}

/** An exercise's name as its heading has it; a way of doing one, `exercise#way`, goes by what its author calls it. */
export function nameOf({ exercises }: Subject, id: string): string {
  const [exercise = id, slug] = id.split('#');
  const found = exercises.get(exercise);
  const way = found?.words.easier.find(({ to }) => to.kind === 'way' && to.slug === slug);
  return way === undefined ? (found?.name ?? id) : plainText(way.say);
}

/** The same session over the weeks: one column each, in order. */
export interface Column {
  readonly week: Week;
  readonly session: PlanSession;
}

/** One session of the booklet. Twice in one week makes two, so that each has a column of its own for every week. */
export interface Strip {
  readonly columns: readonly Column[];
  /** 1 for the first time in a week, 2 for the second. */
  readonly time: number;
}

/** In the order first trained. */
export function stripsOf(plan: Plan): readonly Strip[] {
  const strips = new Map<string, { time: number; columns: Column[] }>();
  for (const week of plan.weeks) {
    const seen = new Map<string, number>();
    for (const session of week.sessions) {
      const time = (seen.get(session.id) ?? 0) + 1;
      seen.set(session.id, time);
      const key = `${time}/${session.id}`;
      const strip = strips.get(key) ?? { time, columns: [] };
      strip.columns.push({ week, session });
      strips.set(key, strip);
    }
  }
  return [...strips.values()];
}

/** Where an item stands: the week, and the group it is done in. */
export interface Standing {
  readonly column: Column;
  readonly group: Group;
  readonly item: Item;
}

/** Every item of a strip in groups of these kinds, week by week. */
export function standingsOf(strip: Strip, kinds: readonly Group['kind'][]): readonly Standing[] {
  return strip.columns.flatMap((column) =>
    column.session.groups
      .filter(({ kind }) => kinds.includes(kind))
      .flatMap((group) => group.items.map((item) => ({ column, group, item }))),
  );
}

/** What has rows of its own on a session's page; a test stands with the work of its row. */
export const WORK_GROUPS: readonly Group['kind'][] = ['test', 'straight', 'circuit'];
