/** Which of the things a coach saw still stand: of each exercise those of the latest day, and none that is too old. */
import type { Observation, Seen } from '../../../model/client.js';
import type { Day } from '../../../model/day.js';
import { compareIds, type ExerciseId } from '../../../model/identity.js';
import { SEEN_DAYS } from '../../rules/seen-days.js';
import type { Remembering } from '../recall.js';

export interface StandingSeen {
  readonly exercise: ExerciseId;
  readonly day: Day;
  /** Each phrase of that day once, in the order written. */
  readonly phrases: readonly { readonly phrase: Seen; readonly observation: Observation }[];
  /** What an earlier day said and no longer stands, where that day was not too old itself. */
  readonly ended: readonly Seen[];
}

type Reading = Pick<Remembering, 'client' | 'exercises' | 'rules' | 'today'>;

/**
 * By exercise as the library has it now, in order of id. What is seen after `today` or longer ago than `seen-days` says
 * nothing, and neither does free text. A later day takes the place of an earlier one.
 */
export function standingSeen(reading: Reading): ReadonlyMap<ExerciseId, StandingSeen> {
  const { client, exercises, rules, today } = reading;
  const holds = rules.valueOf(SEEN_DAYS);
  const byExercise = new Map<ExerciseId, { readonly phrase: Seen; readonly observation: Observation }[]>();
  for (const observation of client.observations) {
    const { means, date, exercise: written } = observation;
    const exercise = written === undefined ? undefined : exercises.get(written)?.id;
    if (means.kind !== 'phrase' || exercise === undefined || date > today || today - date > holds) continue;
    byExercise.set(exercise, [...(byExercise.get(exercise) ?? []), { phrase: means.phrase, observation }]);
  }
  const standing = [...byExercise]
    .sort(([a], [b]) => compareIds(a, b))
    .flatMap(([exercise, all]) => {
      const last = Math.max(...all.map(({ observation }) => observation.date));
      const latest = all.filter(({ observation }) => observation.date === last);
      const day = latest[0]?.observation.date;
      if (day === undefined) return [];
      const phrases = latest.filter(
        ({ phrase, observation }, index) =>
          latest.findIndex((other) => other.phrase === phrase && other.observation.side === observation.side) === index,
      );
      const ended = [...new Set(all.filter(({ observation }) => observation.date < day).map(({ phrase }) => phrase))];
      return [[exercise, { exercise, day, phrases, ended }] as const];
    });
  return new Map(standing);
}

/** A later test, or later work that was marked, goes before what was seen of a load. */
export function isOutdone(
  { client, exercises, history, today }: Remembering,
  { exercise, day: seen }: Pick<StandingSeen, 'exercise' | 'day'>,
): boolean {
  const isIt = (id: ExerciseId): boolean => exercises.get(id)?.id === exercise;
  const tested = client.tests.some(({ exercise: id, date }) => date > seen && date <= today && isIt(id));
  return (
    tested ||
    history.sessions.some(
      ({ day, rows }) =>
        day > seen &&
        rows.some(({ sets }) =>
          sets.some((set) => set.kind === 'work' && set.done !== 'left out' && isIt(set.exercise)),
        ),
    )
  );
}
