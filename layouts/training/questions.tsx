/** One question before, one after each exercise, one at the end: large answers, and none of them filled in. */
import type { RowId } from '../../src/model/identity.js';
import type {
  EffortScreen,
  LastMarked,
  LessScreen,
  ReserveScreen,
  Today,
  TodayScreen,
} from '../../src/model/training.js';
import { sayDate } from '../../src/words/say-date.js';
import { LeftOut } from './left-out.js';
import { Hurts, Main, Own, Sheet, Tap } from './parts.js';
import type { Shown } from './shown.js';

const ANSWERS: readonly Today[] = ['as usual', 'not my best', 'something hurts', 'short of time'];

export function TodayView({ screen, shown }: { readonly screen: TodayScreen; readonly shown: Shown }) {
  const { act, speech } = shown;
  const { phone } = speech.words;
  const { sore } = screen;
  return (
    <Sheet
      name="question"
      where={shown.sessionTitle(screen.place)}
      title={phone.howIsToday}
      answers={ANSWERS.map((today) => <Tap on={() => act({ act: 'today', today })}>{phone.today[today]}</Tap>)}
    >
      {sore === undefined ? null : (
        <>
          <p class="set-line">{phone.whatHurts(phone.parts[sore.where], sore.side, sore.degree)}</p>
          <p>{phone.hurtOn(sayDate(sore.date, speech))}</p>
          <p>{phone.hasItGone}</p>
        </>
      )}
      <LeftOut all={screen.leftOut} shown={shown} />
    </Sheet>
  );
}

export function LessView({ screen, shown }: { readonly screen: LessScreen; readonly shown: Shown }) {
  const { act, speech } = shown;
  const { phone } = speech.words;
  const { short, easierThroughout } = screen;
  return (
    <Sheet
      name="question"
      where={shown.sessionTitle(screen.place)}
      title={phone.lessIsFine}
      answers={
        <>
          <Tap on={() => act({ act: 'go', how: 'as planned' })}>{phone.takePlanned}</Tap>
          {easierThroughout ? (
            <Tap on={() => act({ act: 'go', how: 'easier throughout' })}>{phone.takeEasier}</Tap>
          ) : null}
          {short === null ? null : <Main on={() => act({ act: 'go', how: 'short' })}>{phone.takeShort}</Main>}
        </>
      }
    >
      {short === null ? null : <p class="set-line">{phone.shortIs(short.exercises, short.minutes)}</p>}
    </Sheet>
  );
}

const MOST_SAID = 5;

export function ReserveView({ screen, shown }: { readonly screen: ReserveScreen; readonly shown: Shown }) {
  const { act, speech, nameOf } = shown;
  const { phone } = speech.words;
  const numbers = Array.from({ length: MOST_SAID + 1 }, (_, n) => n);
  return (
    <Sheet
      name="question"
      where={<Own shown={shown} text={nameOf(screen.exercise)} />}
      title={phone.howManyMore}
      answers={
        <>
          <div class="numbers">
            {numbers.map((reps) => (
              <Tap on={() => act({ act: 'reserve', reps })}>{reps === MOST_SAID ? phone.orMore(reps) : reps}</Tap>
            ))}
          </div>
          <div class="pair">
            <Tap on={() => act({ act: 'reserve', reps: null })}>{phone.notSaid}</Tap>
            <Hurts shown={shown} />
          </div>
        </>
      }
      after={<After last={screen.last} row={screen.feeler ? null : screen.row} shown={shown} />}
    >
      {screen.side === undefined ? null : <p class="set-line">{phone.ofSide(screen.side)}</p>}
    </Sheet>
  );
}

interface AfterProps {
  readonly last: LastMarked | null;
  /** The exercise that one more set can be done of; `null` for none. */
  readonly row: RowId | null;
  readonly shown: Shown;
}

/** Below the fold: the stroke before the question was not meant, or one more set is. */
function After({ last, row, shown: { act, speech } }: AfterProps) {
  const { phone } = speech.words;
  if (last === null) return null;
  return (
    <div class="below">
      <div class="answers">
        <Tap on={() => act({ act: 'different', key: last.key })}>{phone.wasDifferent(last.number)}</Tap>
        <Tap on={() => act({ act: 'rub out', key: last.key })}>{phone.rubOut(last.number)}</Tap>
        {row === null ? null : <Tap on={() => act({ act: 'one more', row })}>{phone.oneMore}</Tap>}
      </div>
    </div>
  );
}

export function EffortView({ screen, shown }: { readonly screen: EffortScreen; readonly shown: Shown }) {
  const { act, speech } = shown;
  const { phone } = speech.words;
  const numbers = Array.from({ length: 11 }, (_, n) => n);
  return (
    <Sheet
      name="question"
      where={shown.sessionTitle(screen.place)}
      title={phone.howHard}
      answers={
        <>
          <div class="numbers">
            {numbers.map((effort) => (
              <Tap on={() => act({ act: 'effort', effort })}>{effort}</Tap>
            ))}
          </div>
          <div class="pair">
            <Tap on={() => act({ act: 'effort', effort: null })}>{phone.notSaid}</Tap>
            <Hurts shown={shown} />
          </div>
        </>
      }
      after={<After last={screen.last} row={null} shown={shown} />}
    >
      <p>{phone.hardScale}</p>
      {screen.open === 0 ? null : <p>{phone.openSets(screen.open)}</p>}
    </Sheet>
  );
}
