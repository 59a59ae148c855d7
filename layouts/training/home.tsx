/** The way in: what is to be known first, and one button. */
import { SAME_DAY_SIGNS } from '../../src/model/log.js';
import type { HomeScreen, Notice } from '../../src/model/training.js';
import { sayDate } from '../../src/words/say-date.js';
import { Again, Lines, Main, Sheet, Tap } from './parts.js';
import type { Shown } from './shown.js';

interface Props {
  readonly screen: HomeScreen;
  readonly shown: Shown;
}

/** What says itself why no session is offered. */
const SHUTS: ReadonlySet<Notice['kind']> = new Set<Notice['kind']>(['ended', 'withdrawn', 'alarm', 'cannot keep']);

export function HomeView({ screen, shown }: Props) {
  const { act, speech, sessionTitle } = shown;
  const { phone } = speech.words;
  const { next, notices } = screen;
  const left = notices.find((one) => one.kind === 'interrupted');
  return (
    <Sheet
      name="home"
      where={next === null ? undefined : phone.sessionsDone(next.done, next.of)}
      title={next === null ? phone.trainingTitle : sessionTitle(next)}
      bar={
        next === null ? undefined : left?.set ? (
          <>
            <Tap on={() => act({ act: 'open', occurrence: next.occurrence })}>{phone.notYet}</Tap>
            <Main on={() => left.set && act({ act: 'mark', key: left.set.key })}>{phone.yesFinished}</Main>
          </>
        ) : (
          <Main on={() => act({ act: 'open', occurrence: next.occurrence })}>
            {left ? phone.goOn : phone.startSession(sessionTitle(next))}
          </Main>
        )
      }
      answers={
        <>
          {notices.some(({ kind }) => kind === 'not sent') || next === null ? (
            <Tap on={() => act({ act: 'send' })}>{phone.send}</Tap>
          ) : null}
          <Tap on={() => act({ act: 'this phone' })}>{phone.thisPhone}</Tap>
          <a class="tap" href="#cover">
            {phone.toBooklet}
          </a>
        </>
      }
    >
      {next === null ? (
        notices.some(({ kind }) => SHUTS.has(kind)) ? null : (
          <p>{phone.nothingNext}</p>
        )
      ) : (
        <p>
          {phone.plannedFor(sayDate(next.date, speech))} {phone.about(next.minutes)}
        </p>
      )}
      {notices.map((notice) => (
        <NoticeView notice={notice} shown={shown} />
      ))}
    </Sheet>
  );
}

function NoticeView({ notice, shown }: { readonly notice: Notice; readonly shown: Shown }) {
  const { phone } = shown.speech.words;
  switch (notice.kind) {
    case 'first opening':
      return (
        <div class="notice">
          <Lines lines={phone.firstOpening} />
        </div>
      );
    case 'draft':
      return (
        <div class="notice">
          <Lines lines={phone.draft} />
        </div>
      );
    case 'cannot keep':
      return (
        <div class="notice weighty" role="alert">
          <Lines lines={phone.cannotKeep[notice.fault]} />
        </div>
      );
    case 'new edition':
      return (
        <div class="notice">
          <Lines lines={phone.newEdition(notice.edition)} />
          <Again nodes={shown.changes} />
        </div>
      );
    case 'away':
      return (
        <div class="notice">
          <Lines
            lines={[
              ...phone.away(notice.days),
              ...(shown.lighter ? [phone.awayLighter] : []),
              ...(notice.long ? [phone.awayLong] : []),
            ]}
          />
        </div>
      );
    case 'interrupted':
      return (
        <div class="notice">
          <p>
            {notice.set === null
              ? phone.underWay(notice.minutes)
              : phone.wasOnSet(notice.set.number, Math.floor((shown.now - notice.set.began) / 60_000))}
          </p>
          {notice.set === null ? null : <p>{phone.didYouFinish}</p>}
        </div>
      );
    case 'not sent':
      return <p class="notice">{phone.notSent(notice.sessions)}</p>;
    case 'ended':
      return <p class="notice weighty">{phone.ended}</p>;
    case 'withdrawn':
      return <p class="notice weighty">{phone.withdrawn}</p>;
    case 'hurt':
      return (
        <div class="notice weighty">
          <Lines lines={phone.adviceBefore} />
        </div>
      );
    case 'alarm':
      return (
        <div class="notice weighty">
          <Lines lines={phone.alarmStands} />
          {notice.signs.every((sign) => SAME_DAY_SIGNS.has(sign)) ? <Lines lines={phone.sameDay} /> : null}
          <CallLine shown={shown} />
        </div>
      );
  }
}

export function CallLine({ shown: { emergency } }: { readonly shown: Shown }) {
  return (
    <p class="call">
      {emergency.number === '' ? emergency.call : <a href={`tel:${emergency.number}`}>{emergency.call}</a>}
    </p>
  );
}
