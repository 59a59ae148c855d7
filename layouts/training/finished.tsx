/** The end of a session, and its marks on their way to the coach. */
import type { FinishedScreen, SendScreen } from '../../src/model/training.js';
import { sayDate } from '../../src/words/say-date.js';
import { Main, Sheet, Tap } from './parts.js';
import type { Shown } from './shown.js';

export function FinishedView({ screen, shown }: { readonly screen: FinishedScreen; readonly shown: Shown }) {
  const { act, speech, sessionTitle } = shown;
  const { phone } = speech.words;
  const { place, next, whole } = screen;
  const film = shown.film(place);
  return (
    <Sheet
      name="finished"
      where={phone.sessionsDone(place.done, place.of)}
      title={phone.finished(sessionTitle(place))}
      bar={
        shown.draft ? (
          <Main on={() => act({ act: 'home' })}>{phone.back}</Main>
        ) : (
          <>
            <Tap on={() => act({ act: 'home' })}>{phone.back}</Tap>
            <Main on={() => act({ act: 'send' })}>{phone.send}</Main>
          </>
        )
      }
    >
      <p class="set-line">{whole ? phone.finishedWhole : phone.finishedPart}</p>
      {next === null ? (
        <p>{phone.nothingNext}</p>
      ) : (
        <p>{phone.nextIs(sessionTitle(next), sayDate(next.date, speech))}</p>
      )}
      {film === null ? null : (
        <div class="asked">
          <p class="lead">
            <a href={`#${film.page}`}>{film.name}</a>
          </p>
          {film.lines.map((line) => (
            <p>{line}</p>
          ))}
        </div>
      )}
    </Sheet>
  );
}

export function SendView({ screen, shown }: { readonly screen: SendScreen; readonly shown: Shown }) {
  const { act, speech, pass, passed } = shown;
  const { phone } = speech.words;
  const said = { shared: phone.passed, copied: phone.copied, saved: phone.saved, 'not passed': '' };
  return (
    <Sheet
      name="send"
      title={phone.sendTitle}
      bar={
        <>
          <div class="pair">
            <Tap on={() => pass('copy')}>{phone.copy}</Tap>
            <Tap on={() => pass('save')}>{phone.save}</Tap>
          </div>
          <Main on={() => pass('pass')}>{phone.send}</Main>
        </>
      }
      answers={<Tap on={() => act({ act: 'home' })}>{phone.back}</Tap>}
    >
      {screen.text === '' ? (
        <p>{phone.nothingToSend}</p>
      ) : screen.sessions > 0 ? (
        <p>{phone.sendWhat(screen.sessions)}</p>
      ) : passed === null ? (
        <p>{screen.passed ? phone.passed : phone.sendSome}</p>
      ) : null}
      {shown.sealed === true && screen.text !== '' ? <p>{phone.sendSealed}</p> : null}
      <p role="status" class="set-line">
        {passed === null ? '' : said[passed]}
      </p>
      {screen.text === '' ? null : (
        <details>
          <summary>{phone.showMessage}</summary>
          <pre class="message">{screen.text}</pre>
        </details>
      )}
    </Sheet>
  );
}
