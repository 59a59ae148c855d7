/** One exercise, one set, one large button; and the rest that follows it on the same page. */
import { readSetKey, type SetKind } from '../../src/model/identity.js';
import type { SetScreen, TallyRow } from '../../src/model/training.js';
import { sayEffort } from '../../src/words/say-dose.js';
import { Tally } from '../book/tally.js';
import { ClockFigures, CountFigures, clockOn, isCounted, isLeading, isUp } from './clock.js';
import { MovementPicture, usePlays } from './movement.js';
import { Again, Hurts, Main, Own, Sheet, Tap } from './parts.js';
import type { LeafSays, Shown } from './shown.js';

interface Props {
  readonly screen: SetScreen;
  readonly shown: Shown;
}

export function SetView({ screen, shown }: Props) {
  const { speech, act, leaf } = shown;
  const { phone } = speech.words;
  const { place, figures, item, key } = screen;
  const says = leaf(place, screen.row, figures.exercise);
  const plays = usePlays(figures.exercise);
  const movement = shown.movement(figures.exercise);
  const title = titleOf(figures, shown);
  const resting = screen.rest !== null;
  const clock = clockOn(screen, shown.now);
  const counts = shown.counting && isCounted(screen);
  const byTheClock = isLeading(screen, shown.now) ? phone.intoPlace : isUp(screen, shown.now) ? phone.timeUp : null;
  const dose = shown.dose(figures.set);
  const line = lineOf(screen, shown, figures.set.kind === 'test' && says.test.length > 0);
  const isLong = dose.length > MOST_IN_LARGE;
  const hasClock = clock !== null || counts;
  const sides = screen.tally.length;
  const standing =
    isLong && !resting ? ' long' : !hasClock && sides < 2 ? ' brief' : hasClock && sides > 1 ? ' sided' : '';
  const timed = !resting && screen.clock.kind === 'timed' && screen.clock.began !== null;
  return (
    <Sheet
      name={resting ? 'set resting' : 'set'}
      whereIsSaid={true}
      where={
        <span class="place">
          <span>{phone.inSession(place.session, place.week)}</span>{' '}
          <span>{phone.turn(screen.turn.number, screen.turn.of)}</span>
        </span>
      }
      title={<Own shown={shown} text={title} />}
      answers={
        <>
          {timed ? <Tap on={() => act({ act: 'start again' })}>{phone.startAgain}</Tap> : null}
          {movement !== null && !resting && !timed && !plays.moving && says.picture.length > 0 ? (
            <Tap on={plays.again}>{phone.showAgain}</Tap>
          ) : null}
          {resting ? <WaysOut screen={screen} shown={shown} /> : null}
          {resting && screen.last !== null ? (
            <Tap on={() => act({ act: 'rub out', key: screen.last?.key ?? key })}>
              {lastIsLike(screen) ? phone.rubOut(screen.last.number) : phone.rubOutLast}
            </Tap>
          ) : null}
        </>
      }
      bar={<SetBar screen={screen} shown={shown} />}
      after={<Below screen={screen} shown={shown} says={says} />}
    >
      <p class="heard">{spokenOf(screen, shown)}</p>
      <div class={`figures-and-margin${standing}`}>
        <div class="doses">
          {resting ? <NextLine screen={screen} shown={shown} /> : null}
          {byTheClock === null ? null : (
            <p class="next-line" aria-hidden="true">
              {byTheClock}
            </p>
          )}
          {dose === '' ? null : (
            <p class={isLong ? 'load lesser' : 'load'} aria-hidden="true">
              {dose}
            </p>
          )}
          {line === '' ? null : (
            <p class="set-line" aria-hidden="true">
              {line}
            </p>
          )}
          {screen.paper === undefined && figures.easier === undefined ? (
            <Again nodes={says.pieces} name="pieces" />
          ) : null}
          {waits(screen) ? <Again nodes={says.led} name="led" /> : null}
          <Printed screen={screen} shown={shown} />
          <Again nodes={resting ? [] : ofTheDay(screen, says)} name="of-the-day" />
        </div>
        <div class="margin" aria-hidden="true">
          {screen.tally.map((row) => (
            <TallyLine row={row} shown={shown} />
          ))}
          {clock === null ? null : (
            <ClockFigures key={clock.key} clock={clock} beats={shown.counting && !resting} now={shown.now} />
          )}
          {counts ? <CountFigures now={shown.now} /> : null}
        </div>
      </div>
      <MovementPicture
        key={plays.key}
        picture={says.picture}
        movement={plays.moving && !resting ? movement : null}
        ended={plays.ended}
      />
      <Again as="ol" nodes={says.cues.slice(0, resting ? 1 : 3)} name="cues" />
      {item.tempo === 'normal' ? null : <p>{sentence(speech.words.sets.tempo[item.tempo])}</p>}
    </Sheet>
  );
}

const sentence = (words: string): string =>
  words === '' ? '' : `${words.slice(0, 1).toUpperCase()}${words.slice(1)}.`;

/** A clock that will lead the sets was not begun: how it leads them is to be known before. */
const waits = ({ rest, clock }: SetScreen): boolean =>
  rest === null && (clock.kind === 'every' || clock.kind === 'work and pause') && clock.began === null;

/** A way within an exercise is called with it: `Goblet squat: slower on the way down`. */
function titleOf({ exercise, easier }: SetScreen['figures'], { nameOf }: Shown): string {
  const own = easier !== undefined && (easier.exercise === undefined || easier.exercise.includes('#'));
  if (!own) return nameOf(exercise);
  return `${nameOf(exercise)}: ${easier.say.slice(0, 1).toLowerCase()}${easier.say.slice(1)}`;
}

/** Of what the leaf says of the exercise that day, what is about this set. */
function ofTheDay({ figures, gate }: SetScreen, says: LeafSays): readonly Node[] {
  const { kind, load } = figures.set;
  if (kind === 'test') return says.test;
  if (kind === 'feeler') return says.choose;
  if (kind !== 'work') return [];
  return [...(gate === undefined ? [] : says.gate), ...(load === undefined ? says.choose : [])];
}

/** What was marked last is called by its number only where no other set on the screen is. */
function lastIsLike({ last, row, figures }: SetScreen): boolean {
  return last !== null && last.row === row && readSetKey(last.key)?.kind === figures.set.kind;
}

/** Characters that stand in one line of the largest figures. */
const MOST_IN_LARGE = 12;

/** Not work, and the only one of its kind: it needs no number, and would be taken for the first of the work with one. */
const isOnly = ({ figures, of, round }: SetScreen): boolean =>
  round === undefined && of === 1 && figures.set.kind !== 'work';

/** `Lighter, to warm up.` Work has no name of its own. */
const kindNamed = (kind: SetKind, phone: Shown['speech']['words']['phone']): string =>
  ({
    'warm-up': phone.warmUpSet,
    trial: phone.trialSet,
    feeler: phone.feelerSet,
    test: phone.testSet,
    work: '',
    'cool-down': '',
  })[kind];

/** `Set 2 of 3. Leave 2 in reserve.` What kind of set it is may be named beneath. */
function lineOf(screen: SetScreen, { speech }: Shown, isNamed = false): string {
  const { phone, sets } = speech.words;
  const { figures, item, number, of, round } = screen;
  const { kind, side, optional } = figures.set;
  const counted =
    round !== undefined ? phone.roundOf(round.number, round.of) : isOnly(screen) ? '' : phone.setOf(number, of);
  const asked = item.asked.reserve;
  const effort =
    kind !== 'work' || figures.easier !== undefined
      ? ''
      : item.talk !== undefined
        ? sets.talk[item.talk]
        : asked === null
          ? ''
          : sayEffort(asked, speech);
  return [
    side === undefined ? '' : `${phone.side[side]}.`,
    isNamed ? '' : kindNamed(kind, phone),
    counted,
    optional === true ? sets.optional : '',
    effort,
  ]
    .filter((part) => part !== '')
    .join(' ');
}

/** All of it in one breath: exercise, load and reps, set, effort. */
function spokenOf(screen: SetScreen, shown: Shown): string {
  const { phone } = shown.speech.words;
  const turn = `${phone.turn(screen.turn.number, screen.turn.of)}.`;
  const aloud = shown.aloud(screen.figures.set);
  return [turn, ...(aloud === '' ? [] : [`${aloud}.`]), lineOf(screen, shown)].join(' ');
}

function NextLine({ screen, shown }: Props) {
  const { phone } = shown.speech.words;
  const { figures, number } = screen;
  const dose = shown.dose(figures.set);
  // The heading names the exercise.
  return (
    <p class="next-line" aria-hidden="true">
      {isOnly(screen) ? `${kindNamed(figures.set.kind, phone)} ${dose}` : phone.next(number, dose)}
    </p>
  );
}

/** What paper says where today is otherwise, and what was done the last time. */
function Printed({ screen, shown }: Props) {
  const { phone } = shown.speech.words;
  const { paper, figures, lastTime, gate } = screen;
  const printed = paper === undefined ? '' : shown.dose(paper.set);
  const today = shown.dose(figures.set);
  const before = lastTime === null ? '' : shown.dose(lastTime.set);
  return (
    <>
      {paper === undefined || printed === today ? null : (
        <p class="paper">
          {phone.paper(printed)} {phone.instead(today)} {paper.because.map(({ says }) => says).join(' ')}
        </p>
      )}
      {gate === undefined ? null : <p class="paper">{gate.earned ? phone.earned : phone.notEarned}</p>}
      {lastTime === null ? null : (
        <p class="soft">
          {phone.lastTime(
            lastTime.exercise === figures.exercise ? before : `${shown.nameOf(lastTime.exercise)}, ${before}`,
          )}
        </p>
      )}
    </>
  );
}

function TallyLine({ row, shown }: { readonly row: TallyRow; readonly shown: Shown }) {
  const { phone } = shown.speech.words;
  return (
    <p>
      <Tally marks={row.marks.map(({ key, state }) => ({ key, mark: state }))} label="" />
      {row.side === undefined ? null : phone.side[row.side]}
    </p>
  );
}

/** No button leads to nothing: where no easier way is left, none is offered. */
const WaysOut = ({ screen, shown }: Props) => (
  <>
    {screen.easier.length === 0 ? null : (
      <Tap on={() => shown.act({ act: 'easier' })}>{shown.speech.words.phone.easierToday}</Tap>
    )}
    <Hurts shown={shown} />
  </>
);

/** One frame for work and rest, so that the main button stays the same one and keeps the focus. */
function SetBar({ screen, shown }: Props) {
  const { act, speech } = shown;
  const { phone } = speech.words;
  const { clock, key, number, last, rest, restLonger } = screen;
  const begins = rest !== null || (clock.kind !== 'none' && clock.began === null);
  const only = isOnly(screen);
  const start = rest === null || only ? phone.start : phone.startSet(number);
  const said = begins ? start : only ? phone.setDoneOnly : phone.setDone(number);
  return (
    <>
      <div class="pair">
        {rest === null ? (
          <WaysOut screen={screen} shown={shown} />
        ) : (
          <>
            <Tap on={() => act({ act: 'different', key: last?.key ?? key })}>
              {lastIsLike(screen) ? phone.wasDifferent(last?.number ?? number) : phone.lastWasDifferent}
            </Tap>
            <Tap on={() => act({ act: 'longer rest', seconds: restLonger })}>{phone.longerRest(restLonger)}</Tap>
          </>
        )}
      </div>
      <Main on={() => act(begins ? { act: 'begin' } : { act: 'mark', key })}>{said}</Main>
    </>
  );
}

/** Below the fold: what stops it, why it is so, the lesser ways out, what may go wrong, and whole pages. */
function Below({ screen, shown, says }: Props & { readonly says: ReturnType<Shown['leaf']> }) {
  const { act, speech } = shown;
  const { phone } = speech.words;
  const { row, place, key, rest, last } = screen;
  return (
    <div class="below">
      {says.stop.length === 0 ? null : (
        <section class="stop">
          <h3>{phone.stop}</h3>
          <Again nodes={says.stop} />
        </section>
      )}
      {says.why.length === 0 ? null : (
        <details class="why">
          <summary>{phone.why}</summary>
          <Again nodes={says.why} />
        </details>
      )}
      <div class="answers">
        {rest === null && last !== null ? (
          <>
            <Tap on={() => act({ act: 'different', key: last.key })}>
              {lastIsLike(screen) ? phone.wasDifferent(last.number) : phone.lastWasDifferent}
            </Tap>
            <Tap on={() => act({ act: 'rub out', key: last.key })}>
              {lastIsLike(screen) ? phone.rubOut(last.number) : phone.rubOutLast}
            </Tap>
          </>
        ) : null}
        <Tap on={() => act({ act: 'leave out', key })}>{phone.leaveSet}</Tap>
        <Tap on={() => act({ act: 'leave exercise', row })}>{phone.leaveExercise}</Tap>
        {last?.row === row ? <Tap on={() => act({ act: 'one more', row })}>{phone.oneMore}</Tap> : null}
        <Tap on={() => act({ act: 'stop here' })}>{phone.stopHere}</Tap>
      </div>
      {says.faults.length === 0 ? null : (
        <section>
          <Again nodes={says.faults} name="faults" />
        </section>
      )}
      <ul class="ways">
        {says.page === '' ? null : (
          <li>
            <a href={`#${says.page}`}>{phone.wholeExercise}</a>
          </li>
        )}
        <li>
          <a href={`#week-${place.week}`}>{phone.wholeWeek}</a>
        </li>
        <li>
          <a href="#cover">{phone.toBooklet}</a>
        </li>
      </ul>
    </div>
  );
}
