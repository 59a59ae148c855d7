/** A public programme as an outline: exercises, sets and reps. Loads belong to people and stand nowhere here. */
import type { Block, Row } from '../../src/model/programme.js';
import type { PublicProgramme } from '../../src/model/public-library.js';
import { sayDose } from '../../src/words/say-dose.js';
import { Paragraphs } from '../lines.js';
import { InnerPage } from './inner-page.js';
import type { LibraryProps } from './library-props.js';

function Target({ row, library, words }: LibraryProps & { readonly row: Row }) {
  const { target } = row;
  if (target.kind === 'pattern') return <>{words.anyOf(words.patterns[target.pattern].toLowerCase())}</>;
  const exercise = library.exercises.find(({ id }) => id === target.id);
  return exercise ? <a href={`../exercises/${exercise.id}.html`}>{exercise.name}</a> : target.id;
}

function BlockTable({ block, ...props }: LibraryProps & { readonly block: Block }) {
  const { words, speech } = props;
  return (
    <table class="halves">
      <caption>{block.kind === 'circuit' ? words.turnAbout(block.rounds ?? 1) : block.name}</caption>
      <thead>
        <tr>
          <th scope="col">{words.exercise}</th>
          <th scope="col">{words.setsAndReps}</th>
        </tr>
      </thead>
      <tbody>
        {block.rows.map((row) => (
          <tr>
            <td>
              <Target {...props} row={row} />
            </td>
            <td class="figures">{sayDose(row.dose, speech)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

export function LibraryProgramme({ of, ...props }: LibraryProps & { readonly of: PublicProgramme }) {
  const { words } = props;
  return (
    <InnerPage title={of.name} words={words}>
      <p>
        {of.forWhom === '' ? '' : `${words.forWhom(of.forWhom)} `}
        {words.weeks(of.curve.length)}
      </p>
      <Paragraphs lines={of.description} />
      {of.sessions.map((session) => (
        <section>
          <h2>
            {session.id.toUpperCase()}
            {session.name === '' ? '' : `: ${session.name}`}
          </h2>
          <Paragraphs lines={session.notes} />
          {session.blocks.map((block) => (
            <BlockTable {...props} block={block} />
          ))}
        </section>
      ))}
      <p class="soft">{words.outline}</p>
    </InnerPage>
  );
}
