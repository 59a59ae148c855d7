/** One exercise as the public sees it: words, no loads, nobody's numbers. */
import type { ComponentChildren } from 'preact';
import type { Exercise } from '../../src/model/exercise.js';
import type { Line } from '../../src/model/prose.js';
import type { LibraryWords } from '../../src/words/library-words.js';
import { sayRuleTitle } from '../../src/words/rulebook-words.js';
import { unquoted } from '../../src/words/unquoted.js';
import { Bullets, Paragraphs, sentence, Words } from '../lines.js';
import { ChalkLine } from './chalk-line.js';
import { Drawing } from './drawing.js';
import { InnerPage } from './inner-page.js';
import { kitText } from './kit-text.js';
import type { LibraryProps } from './library-props.js';
import { rulesOf } from './rules-of-exercise.js';

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
function Faults({ of, words, speech }: { readonly of: Exercise } & Pick<LibraryProps, 'words' | 'speech'>) {
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

/** Where the rulebook says what a plan makes of this exercise. */
function Rules({ of, rules, words }: { readonly of: Exercise } & Pick<LibraryExerciseProps, 'rules' | 'words'>) {
  const known = rulesOf(of).filter((id) => rules.has(id));
  if (known.length === 0) return null;
  return (
    <section class="screen-only">
      <h2>{words.theRules}</h2>
      <ul class="links">
        {known.map((id) => (
          <li>
            <a href={`../rulebook/index.html#${id}`}>{sayRuleTitle(id)}</a>
          </li>
        ))}
      </ul>
    </section>
  );
}

const Fact = ({ name, children }: { readonly name: string; readonly children: ComponentChildren }) => (
  <div>
    <dt>{name}</dt>
    <dd>{children}</dd>
  </div>
);

export interface LibraryExerciseProps extends LibraryProps {
  /** Ids of every rule the rulebook has. */
  readonly rules: ReadonlySet<string>;
}

/** On the screen a page of the book; printed, one card. */
export function LibraryExercise(props: LibraryExerciseProps & { readonly of: Exercise }) {
  const { of, words, speech, rules } = props;
  const { facts } = of;
  return (
    <InnerPage title={of.name} words={words} card>
      <div class="opening">
        <div class="lead-in">
          <Paragraphs lines={of.words.description} />
          <Drawing {...props} of={of.id} size="whole" />
        </div>
        <dl class="facts">
          <Fact name={words.movement}>{words.patterns[facts.pattern]}</Fact>
          <Fact name={words.needs}>{kitText(of, props)}</Fact>
          <Fact name={words.sidesHead}>{words.sides[facts.sides]}</Fact>
          <Fact name={words.asks}>{facts.asks.length === 0 ? words.asksNothing : words.asked(facts.asks)}</Fact>
        </dl>
        <div class="told">
          {facts.signOff ? <p class="lead">{words.signOff}</p> : null}
          <Told title={words.setUp} lines={of.words.setUp} />
          <Told title={words.pickUp} lines={of.words.pickUp.map(sentence)} />
          <Cues of={of} words={words} />
          <Told title={words.breath} lines={of.words.breath} />
          <Told title={words.putDown} lines={of.words.putDown.map(sentence)} />
          {of.words.stopIf.length === 0 ? null : (
            <section class="stop">
              <h2>{words.stopIf}</h2>
              <Bullets lines={of.words.stopIf} />
            </section>
          )}
        </div>
      </div>
      <Faults of={of} words={words} speech={speech} />
      <ChalkLine {...props} />
      <Told title={words.partner} lines={of.words.partner} />
      <Rules of={of} rules={rules} words={words} />
      <p class="soft screen-only">{words.card}</p>
    </InnerPage>
  );
}
