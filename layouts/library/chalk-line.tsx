/**
 * What is easier and what is harder, on one chalk line that always runs the same way: easier where a line of writing
 * begins, this exercise in the middle, harder where a line ends. On a narrow screen the line runs down the page.
 */
import type { Cause, Exercise, Version } from '../../src/model/exercise.js';
import { Words } from '../lines.js';
import { Drawing } from './drawing.js';
import type { LibraryProps } from './library-props.js';
import type { Neighbour } from './neighbours.js';

/** Ways of doing this exercise itself, which have no page of their own. */
const ownWays = (versions: readonly Version[]): readonly Version[] => versions.filter(({ to }) => to.kind === 'way');

interface StationProps extends LibraryProps {
  readonly end: 'easier' | 'harder';
  readonly ways: readonly Version[];
  readonly exercises: readonly Neighbour[];
  /** What it is for, in words; empty where its author does not say. */
  readonly sayFor: (causes: readonly Cause[]) => string;
}

function Station({ end, ways, exercises, sayFor, words, ...shown }: StationProps) {
  const what = (causes: readonly Cause[]) => {
    const said = sayFor(causes);
    return said === '' ? null : <span class="for-what">{said}</span>;
  };
  return (
    <div class={end}>
      <h3>{words[end]}</h3>
      {exercises.length + ways.length === 0 ? (
        <p class="soft">{words.none}</p>
      ) : (
        <ul class="links">
          {ways.map(({ say, causes }) => (
            <li>
              <Words line={say} /> {what(causes)}
            </li>
          ))}
          {exercises.map(({ exercise: { id, name, facts }, causes }) => (
            <li>
              <Drawing {...shown} of={id} size="small" />
              <a href={`${id}.html`}>{name}</a>
              {facts.signOff ? words.seenFirst : ''} {what(causes)}
            </li>
          ))}
        </ul>
      )}
    </div>
  );
}

export function ChalkLine({ of, ...props }: LibraryProps & { readonly of: Exercise }) {
  const { neighbours, words, speech } = props;
  const { easier, harder } = neighbours(of);
  const { causes, harderCauses } = speech.words;
  return (
    <section class="chalk" aria-labelledby="easier-and-harder">
      <h2 id="easier-and-harder">{words.byVersion}</h2>
      <div class="line">
        <Station {...props} end="easier" ways={ownWays(of.words.easier)} exercises={easier} sayFor={causes} />
        <div class="here">
          <h3>{words.here}</h3>
          <Drawing {...props} of={of.id} size="small" />
          <p>{of.name}</p>
        </div>
        <Station {...props} end="harder" ways={ownWays(of.words.harder)} exercises={harder} sayFor={harderCauses} />
      </div>
    </section>
  );
}
