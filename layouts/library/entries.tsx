/** A list as a book's index has it: a heading, and the names that belong under it. */
import type { Exercise } from '../../src/model/exercise.js';
import { compareIds } from '../../src/model/identity.js';
import { fitOf } from './fit.js';

export interface Entry {
  readonly head: string;
  readonly exercises: readonly Exercise[];
}

export const ExerciseLink = ({ of }: { readonly of: Exercise }) => <a href={`exercises/${of.id}.html`}>{of.name}</a>;

/** Names in alphabetical order of what the reader sees, the same on every machine. */
export const byName = (exercises: readonly Exercise[]): readonly Exercise[] =>
  [...exercises].sort((a, b) => compareIds(a.name, b.name) || compareIds(a.id, b.id));

/** Exercises under every heading they name, headings in alphabetical order. */
export function grouped(
  exercises: readonly Exercise[],
  headsOf: (of: Exercise) => readonly string[],
): readonly Entry[] {
  const under = new Map<string, Exercise[]>();
  for (const of of exercises) {
    for (const head of new Set(headsOf(of))) {
      const own = under.get(head);
      if (own === undefined) under.set(head, [of]);
      else own.push(of);
    }
  }
  return [...under].sort(([a], [b]) => compareIds(a, b)).map(([head, own]) => ({ head, exercises: own }));
}

export interface EntriesProps {
  readonly entries: readonly Entry[];
  /** The level of the headings. */
  readonly level: 2 | 3;
  /** The lines carry what the filtering sentence reads. */
  readonly filtered?: true;
}

/** From so many lines on a slow phone takes more than a frame to move them. */
const MANY = 400;

export function Entries({ entries, level, filtered }: EntriesProps) {
  const Head = level === 2 ? 'h2' : 'h3';
  const lines = entries.reduce((sum, { exercises }) => sum + exercises.length, 0);
  return (
    <div class={lines < MANY ? 'columns' : 'columns many'}>
      {entries.map(({ head, exercises }) => (
        <section class="entry" data-filtered={filtered ? '' : undefined}>
          <Head>{head}</Head>
          <ul class="links">
            {byName(exercises).map((exercise) => (
              <li {...(filtered ? fitOf(exercise) : {})}>
                <ExerciseLink of={exercise} />
              </li>
            ))}
          </ul>
        </section>
      ))}
    </div>
  );
}
