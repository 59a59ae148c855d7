/** What is not done in this session, and why; and a session of which that is all. */
import type { LetBeScreen, TodayScreen } from '../../src/model/training.js';
import { sayDate } from '../../src/words/say-date.js';
import { Lines, Main, Own, Sheet, Tap } from './parts.js';
import type { Shown } from './shown.js';

export function LeftOut({ all, shown }: { readonly all: TodayScreen['leftOut']; readonly shown: Shown }) {
  const { speech } = shown;
  const { phone } = speech.words;
  return (
    <>
      {all.map(({ exercise, because, hurt }) => (
        <p class="paper">
          {phone.notToday} <Own shown={shown} text={shown.nameOf(exercise)} />.{' '}
          {hurt === undefined ? (
            because.map(({ says }) => says).join(' ')
          ) : (
            <>
              {hurt.in === undefined ? phone.it : <Own shown={shown} text={shown.nameOf(hurt.in)} />}{' '}
              {phone.hurtSo(hurt.degree, sayDate(hurt.date, speech))}
            </>
          )}
        </p>
      ))}
    </>
  );
}

export function LetBeView({ screen, shown }: { readonly screen: LetBeScreen; readonly shown: Shown }) {
  const { act, speech, sessionTitle } = shown;
  const { phone } = speech.words;
  const { next, place } = screen;
  return (
    <Sheet
      name="around"
      where={sessionTitle(place)}
      title={phone.nothingLeft}
      bar={
        <>
          <Tap on={() => act({ act: 'home' })}>{phone.back}</Tap>
          <Main on={() => act({ act: 'let be' })}>{phone.letBe}</Main>
        </>
      }
    >
      <Lines lines={phone.nothingLeftIsFine} />
      <LeftOut all={screen.leftOut} shown={shown} />
      <p>{next === null ? phone.nothingNext : phone.nextIs(sessionTitle(next), sayDate(next.date, speech))}</p>
    </Sheet>
  );
}
