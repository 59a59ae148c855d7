/** One exercise as the public sees it: words, no loads, nobody's numbers. */
import type { ComponentChildren } from 'preact';
import type { Cause, Exercise, Version } from '../../src/model/exercise.js';
import type { Line } from '../../src/model/prose.js';
import type { LibraryWords } from '../../src/words/library-words.js';
import { unquoted } from '../../src/words/unquoted.js';
import { Bullets, Paragraphs, sentence, Words } from '../lines.js';
import { kitText, type LibraryProps } from './index-page.js';
import { InnerPage } from './inner-page.js';
import { type Neighbour, neighboursIn } from './neighbours.js';

function Told({ title, lines }: { readonly title: string; readonly lines: readonly Line[] }) {
  if (lines.length === 0) return null;
  return (
    <section>
      <h2>{title}</h2>
      <Bullets lines={lines} />
    </section>
  );
}

function Cues({ of, words }: { readonly of: Exercise; readonly words: LibraryWords }) {
  if (of.words.cues.length === 0) return null;
  return (
    <section>
      <h2>{words.cues}</h2>
      <ol class="cues">
        {of.words.cues.map(({ phase, line }) => (
          <li>
            {phase === '' ? null : <span class="lead">{phase} </span>}
            <Words line={line} />
          </li>
        ))}
      </ol>
    </section>
  );
}

/** What is said stands in quotation marks, whether or not its author set them. */
function Faults({ of, words, speech }: { readonly of: Exercise } & Omit<LibraryProps, 'library'>) {
  const [opening, closing] = speech.words.booklet.quotes;
  if (of.words.faults.length === 0) return null;
  return (
    <section>
      <h2>{words.faults}</h2>
      <table class="halves">
        <thead>
          <tr>
            <th scope="col">{words.youSee}</th>
            <th scope="col">{words.say}</th>
          </tr>
        </thead>
        <tbody>
          {of.words.faults.map(({ see, say }) => (
            <tr>
              <td>
                <Words line={see} />
              </td>
              <td>
                {opening}
                <Words line={unquoted(say)} />
                {closing}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

/** Ways of doing this exercise itself, which have no page of their own. */
const ownWays = (versions: readonly Version[]): readonly Version[] => versions.filter(({ to }) => to.kind === 'way');

function Versions({
  title,
  ways,
  exercises,
  sayFor,
  words,
}: {
  readonly title: string;
  readonly ways: readonly Version[];
  readonly exercises: readonly Neighbour[];
  /** What it is for, in words; empty where its author does not say. */
  readonly sayFor: (causes: readonly Cause[]) => string;
  readonly words: LibraryWords;
}) {
  const what = (causes: readonly Cause[]) => {
    const said = sayFor(causes);
    return said === '' ? null : <span class="for-what">{said}</span>;
  };
  return (
    <div>
      <h2>{title}</h2>
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
              <a href={`${id}.html`}>{name}</a>
              {facts.signOff ? words.seenFirst : ''} {what(causes)}
            </li>
          ))}
        </ul>
      )}
    </div>
  );
}

/** Easier on the left, harder on the right, and what each is for; one below the other where there is no room. */
function Chain({ of, library, words, speech }: LibraryProps & { readonly of: Exercise }) {
  const { easier, harder } = neighboursIn(library.exercises)(of);
  const { causes, harderCauses } = speech.words;
  return (
    <section class="chain" aria-label={`${words.easier}, ${words.harder}`}>
      <Versions title={words.easier} ways={ownWays(of.words.easier)} exercises={easier} sayFor={causes} words={words} />
      <Versions
        title={words.harder}
        ways={ownWays(of.words.harder)}
        exercises={harder}
        sayFor={harderCauses}
        words={words}
      />
    </section>
  );
}

const Fact = ({ name, children }: { readonly name: string; readonly children: ComponentChildren }) => (
  <div>
    <dt>{name}</dt>
    <dd>{children}</dd>
  </div>
);

export function LibraryExercise(props: LibraryProps & { readonly of: Exercise }) {
  const { of, library, words, speech } = props;
  const { facts } = of;
  return (
    <InnerPage title={of.name} words={words}>
      <Paragraphs lines={of.words.description} />
      <dl class="facts">
        <Fact name={words.movement}>{words.patterns[facts.pattern]}</Fact>
        <Fact name={words.needs}>{kitText(of, props)}</Fact>
        <Fact name={words.asks}>{facts.asks.length === 0 ? words.asksNothing : words.asked(facts.asks)}</Fact>
      </dl>
      <p>{words.sides[facts.sides]}.</p>
      {facts.signOff ? <p class="lead">{words.signOff}</p> : null}
      <Told title={words.setUp} lines={of.words.setUp} />
      <Told title={words.pickUp} lines={of.words.pickUp.map(sentence)} />
      <Told title={words.putDown} lines={of.words.putDown.map(sentence)} />
      <Cues of={of} words={words} />
      <Told title={words.breath} lines={of.words.breath} />
      <Faults of={of} words={words} speech={speech} />
      <Chain of={of} library={library} words={words} speech={speech} />
      {of.words.stopIf.length === 0 ? null : (
        <section class="stop">
          <h2>{words.stopIf}</h2>
          <Bullets lines={of.words.stopIf} />
        </section>
      )}
      <Told title={words.partner} lines={of.words.partner} />
    </InnerPage>
  );
}
