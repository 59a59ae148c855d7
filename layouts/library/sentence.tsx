/**
 * The sentence that filters: *I have a chair and one bell; leave out overhead.* Every word one can choose is a box to
 * tick. The style of the page leaves lines out by what is ticked, without any script; with one, the sentence is read back.
 */
import type { LibraryWords } from '../../src/words/library-words.js';
import type { Speech } from '../../src/words/speech.js';
import { askWord, type Choices } from './fit.js';

interface Choice {
  readonly id: string;
  readonly value: string;
  readonly say: string;
}

function Clause({ lead, part, choices, end }: ClauseProps) {
  return (
    <fieldset class={part}>
      <legend>{lead}</legend>{' '}
      {choices.map(({ id, value, say }, at) => (
        <>
          <span class="choice">
            <label>
              <input type="checkbox" id={id} value={value} /> <span>{say}</span>
            </label>
            {at === choices.length - 1 ? end : ','}
          </span>{' '}
        </>
      ))}
    </fieldset>
  );
}

interface ClauseProps {
  readonly lead: string;
  readonly part: 'have' | 'out' | 'spare';
  readonly choices: readonly Choice[];
  /** The sign that ends it. */
  readonly end: ';' | '.';
}

export interface SentenceProps {
  readonly choices: Choices;
  readonly words: LibraryWords;
  readonly speech: Speech;
}

export function Sentence({ choices, words, speech }: SentenceProps) {
  const { loads, things, often, qualities, parts } = choices;
  const said = words.sentence;
  const have: readonly Choice[] = [
    { id: 'have-nothing', value: 'nothing', say: said.noKit },
    ...loads.map((load) => ({ id: `have-${load}`, value: load, say: said.loads[load] })),
    ...things.map((thing) => ({ id: `have-${thing}`, value: thing, say: said.thing(speech.words.loads.kind[thing]) })),
  ];
  const out = (of: (typeof parts)[number]): Choice => ({
    id: `out-${askWord(of)}`,
    value: askWord(of),
    say: said.out(of),
  });
  return (
    <form class="sentence" aria-labelledby="only-what-fits">
      <h2 id="only-what-fits">{said.title}</h2>
      <div class="said">
        <Clause lead={said.have} part="have" choices={have} end={often.length > 0 ? ';' : '.'} />
        {often.length === 0 ? null : <Clause lead={said.leaveOut} part="out" choices={often.map(out)} end="." />}
      </div>
      {qualities.length + parts.length === 0 ? null : (
        <details>
          <summary>{said.more}</summary>
          <div class="said">
            {qualities.length === 0 ? null : (
              <Clause
                lead={said.leaveOutToo}
                part="out"
                choices={qualities.map(out)}
                end={parts.length > 0 ? ';' : '.'}
              />
            )}
            {parts.length === 0 ? null : <Clause lead={said.parts} part="spare" choices={parts.map(out)} end="." />}
          </div>
        </details>
      )}
      <p class="read-back">
        <output></output> <button type="reset">{said.again}</button>
      </p>
    </form>
  );
}
