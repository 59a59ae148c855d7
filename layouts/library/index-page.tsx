/** The library's first page, set like a book's index: by movement, kit, what is asked, and easier or harder. */
import { type Exercise, PATTERNS } from '../../src/model/exercise.js';
import { compareIds } from '../../src/model/identity.js';
import type { Library } from '../../src/model/studio.js';
import type { LibraryWords } from '../../src/words/library-words.js';
import type { Speech } from '../../src/words/speech.js';
import { Paragraphs } from '../lines.js';
import { StudioPage } from '../studio-page.js';
import { type Neighbour, neighboursIn } from './neighbours.js';

export interface LibraryProps {
  readonly library: Library;
  readonly words: LibraryWords;
  readonly speech: Speech;
}

interface Entry {
  readonly head: string;
  readonly exercises: readonly Exercise[];
}

const ExerciseLink = ({ of }: { readonly of: Exercise }) => <a href={`exercises/${of.id}.html`}>{of.name}</a>;

/** Names in alphabetical order of what the reader sees, the same on every machine. */
const byName = (exercises: readonly Exercise[]): readonly Exercise[] =>
  [...exercises].sort((a, b) => compareIds(a.name, b.name) || compareIds(a.id, b.id));

function Entries({
  id,
  title,
  entries,
}: {
  readonly id: string;
  readonly title: string;
  readonly entries: readonly Entry[];
}) {
  return (
    <section aria-labelledby={id}>
      <h2 id={id}>{title}</h2>
      <div class="columns">
        {entries.map(({ head, exercises }) => (
          <div class="entry">
            <h3>{head}</h3>
            <ul class="links">
              {byName(exercises).map((exercise) => (
                <li>
                  <ExerciseLink of={exercise} />
                </li>
              ))}
            </ul>
          </div>
        ))}
      </div>
    </section>
  );
}

/** Exercises under every heading they name, headings in alphabetical order. */
function grouped(exercises: readonly Exercise[], headsOf: (of: Exercise) => readonly string[]): readonly Entry[] {
  const heads = [...new Set(exercises.flatMap(headsOf))].sort(compareIds);
  return heads.map((head) => ({ head, exercises: exercises.filter((of) => headsOf(of).includes(head)) }));
}

const loadsOf = ({ facts }: Exercise, { words }: Omit<LibraryProps, 'library'>): readonly string[] => [
  ...facts.kit.load.map(words.load),
  ...(facts.kit.load.length === 0 || facts.kit.unloaded ? [words.nothingNeeded] : []),
];

const thingsOf = ({ facts }: Exercise, { speech }: Omit<LibraryProps, 'library'>): readonly string[] =>
  facts.kit.things.map((thing) => speech.words.loads.kind[thing]);

const capital = (text: string): string => `${text.slice(0, 1).toUpperCase()}${text.slice(1)}`;

/** Headings an exercise stands under by its kit; *nothing* only where nothing at all is needed. */
function kitOf(of: Exercise, props: Omit<LibraryProps, 'library'>): readonly string[] {
  const things = thingsOf(of, props);
  const loads = loadsOf(of, props).filter((load) => load !== props.words.nothingNeeded || things.length === 0);
  return [...loads, ...things].map(capital);
}

/** `One bell or one dumbbell; chair`. */
export function kitText(of: Exercise, props: Omit<LibraryProps, 'library'>): string {
  const things = thingsOf(of, props);
  const loads = loadsOf(of, props);
  const alone = loads.length === 1 && loads[0] === props.words.nothingNeeded && things.length > 0;
  return capital([...(alone ? [] : [props.words.either(loads)]), ...things].join('; '));
}

function Versions({ library, words }: LibraryProps) {
  const neighbours = neighboursIn(library.exercises);
  const rows = byName(library.exercises).map((exercise) => ({ exercise, ...neighbours(exercise) }));
  const list = (versions: readonly Neighbour[]) =>
    versions.length === 0 ? (
      <span class="soft">{words.none}</span>
    ) : (
      <ul class="links">
        {versions.map(({ exercise }) => (
          <li>
            <ExerciseLink of={exercise} />
            {exercise.facts.signOff ? words.seenFirst : ''}
          </li>
        ))}
      </ul>
    );
  return (
    <section aria-labelledby="by-version">
      <h2 id="by-version">{words.byVersion}</h2>
      <table class="thirds">
        <thead>
          <tr>
            <th scope="col">{words.easier}</th>
            <th scope="col">{words.exercise}</th>
            <th scope="col">{words.harder}</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ exercise, easier, harder }) => (
            <tr>
              <td>{list(easier)}</td>
              <th scope="row">
                <ExerciseLink of={exercise} />
              </th>
              <td>{list(harder)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

export function LibraryIndex(props: LibraryProps) {
  const { library, words } = props;
  const { exercises, programmes, studio } = library;
  const movements = PATTERNS.flatMap((pattern): readonly Entry[] => {
    const own = exercises.filter(({ facts }) => facts.pattern === pattern);
    return own.length === 0 ? [] : [{ head: words.patterns[pattern], exercises: own }];
  });
  const open = programmes.filter((programme) => programme.public);
  return (
    <StudioPage
      title={words.title(studio.name)}
      foot={
        <>
          <p>
            <a href="rulebook/index.html">{words.rulebook}</a>
          </p>
          <p>
            {studio.name}, {studio.place}. {words.notMedical}
          </p>
        </>
      }
    >
      <p class="ask-first">{words.doesNotKnowYou}</p>
      <Entries id="by-movement" title={words.byMovement} entries={movements} />
      <Entries id="by-kit" title={words.byKit} entries={grouped(exercises, (of) => kitOf(of, props))} />
      <Entries
        id="by-ask"
        title={words.byAsk}
        entries={grouped(exercises, ({ facts }) => facts.asks.map(({ of }) => words.ask(of)))}
      />
      <Versions {...props} />
      {open.length === 0 ? null : (
        <section aria-labelledby="programmes">
          <h2 id="programmes">{words.programmes}</h2>
          {open.map((programme) => (
            <div class="entry">
              <h3>
                <a href={`programmes/${programme.id}.html`}>{programme.name}</a>
              </h3>
              <Paragraphs lines={programme.description} />
            </div>
          ))}
        </section>
      )}
    </StudioPage>
  );
}
