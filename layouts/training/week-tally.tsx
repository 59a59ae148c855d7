/** The tally of one exercise beside its line in the week: its marks and which side they are of, said aloud by how many there are of each. */
import type { TallyRow, TallyState } from '../../src/model/training.js';
import type { PhoneSpeech } from '../../src/words/phone-speech.js';
import { Tally } from '../book/tally.js';

interface Props {
  readonly tally: readonly TallyRow[];
  readonly words: Pick<PhoneSpeech['words'], 'doses' | 'phone'>;
}

/** In the order in which they are told. */
const STATES: readonly TallyState[] = ['done', 'easier', 'extra', 'left out', 'to do'];

/** `Left: 2 sets done; 1 to do`. */
function sayRow({ side, marks }: TallyRow, { doses, phone }: Props['words']): string {
  const told = STATES.map((state) => ({ state, sets: marks.filter((one) => one.state === state).length }))
    .filter(({ sets }) => sets > 0)
    .map(({ state, sets }, i) => `${i === 0 ? doses.sets(sets) : sets} ${phone.inTally[state]}`);
  return (side === undefined ? '' : `${phone.side[side]}: `) + told.join('; ');
}

export function WeekTally({ tally, words }: Props) {
  return (
    <>
      {tally.map((row) => (
        <>
          <Tally marks={row.marks.map(({ key, state }) => ({ key, mark: state }))} label={sayRow(row, words)} />
          {row.side === undefined ? null : (
            <span class="side" aria-hidden="true">
              {words.phone.side[row.side]}
            </span>
          )}
        </>
      ))}
    </>
  );
}
