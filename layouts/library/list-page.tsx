/** The other lists of the library: by kit, by what is asked, and what is easier and harder than what. */
import { byName, Entries, ExerciseLink, grouped } from './entries.js';
import { InnerPage } from './inner-page.js';
import { kitOf } from './kit-text.js';
import type { LibraryProps } from './library-props.js';
import { type ListName, Lists, listTitle } from './lists.js';
import type { Neighbour } from './neighbours.js';

function EasierAndHarder({ library, neighbours, words }: LibraryProps) {
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
  );
}

export function LibraryList(props: LibraryProps & { readonly name: Exclude<ListName, 'movement'> }) {
  const { name, library, words } = props;
  const { exercises, programmes } = library;
  return (
    <InnerPage title={listTitle(name, words)} words={words} root="">
      <Lists here={name} programmes={programmes.length > 0} words={words} />
      {name === 'version' ? (
        <EasierAndHarder {...props} />
      ) : (
        <Entries
          level={2}
          entries={
            name === 'kit'
              ? grouped(exercises, (of) => kitOf(of, props))
              : grouped(exercises, ({ facts }) => facts.asks.map(({ of }) => words.ask(of)))
          }
        />
      )}
    </InnerPage>
  );
}
