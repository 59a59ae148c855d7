/** What hurts: the emergency list before anything else; then where and on which side, how much, and what follows. */
import { BODY_PARTS } from '../../src/model/exercise.js';
import { ALARM_SIGNS, SAME_DAY_SIGNS } from '../../src/model/log.js';
import type { PainScreen } from '../../src/model/training.js';
import { CallLine } from './home.js';
import { Lines, Main, Own, Sheet, Tap } from './parts.js';
import type { Shown } from './shown.js';

export function PainView({ screen, shown }: { readonly screen: PainScreen; readonly shown: Shown }) {
  const { act, speech } = shown;
  const { phone } = speech.words;
  const { step } = screen;
  switch (step.at) {
    case 'signs':
      return (
        <Sheet
          name="pain signs"
          title={phone.anyOfThese}
          // One below the other, so that nobody comes to the answer before every sign was passed.
          answers={
            <>
              {ALARM_SIGNS.map((sign) => (
                <Tap on={() => act({ act: 'sign', sign })}>{phone.signs[sign]}</Tap>
              ))}
              <Main on={() => act({ act: 'sign', sign: null })}>{phone.noneOfThese}</Main>
              <Tap on={() => act({ act: 'back' })}>{phone.back}</Tap>
            </>
          }
        />
      );
    case 'emergency':
      return (
        <Sheet
          name="pain emergency"
          title={phone.stopNow}
          bar={
            <div class="pair">
              <Tap on={() => act({ act: 'back' })}>{phone.slip}</Tap>
              <Tap on={() => act({ act: 'heed', take: 'stop' })}>{phone.take.stop}</Tap>
            </div>
          }
        >
          <p class="set-line">{phone.signs[step.sign]}</p>
          {SAME_DAY_SIGNS.has(step.sign) ? <Lines lines={phone.sameDay} /> : null}
          <CallLine shown={shown} />
          <Lines lines={phone.emergency} />
        </Sheet>
      );
    case 'where':
      return (
        <Sheet
          name="pain"
          title={phone.whereHurts}
          answers={
            <>
              <div class="loads">
                {[...BODY_PARTS, 'elsewhere' as const].map((where) => (
                  <Tap on={() => act({ act: 'where', where })}>{phone.parts[where]}</Tap>
                ))}
              </div>
              <Tap on={() => act({ act: 'back' })}>{phone.back}</Tap>
            </>
          }
        />
      );
    case 'side':
      return (
        <Sheet
          name="pain"
          where={phone.whatHurts(phone.parts[step.where])}
          title={phone.whichSide}
          answers={
            <>
              <div class="loads">
                <Tap on={() => act({ act: 'side', side: 'left' })}>{phone.side.left}</Tap>
                <Tap on={() => act({ act: 'side', side: 'right' })}>{phone.side.right}</Tap>
              </div>
              <Tap on={() => act({ act: 'side', side: 'both' })}>{phone.bothSides}</Tap>
              <Tap on={() => act({ act: 'back' })}>{phone.back}</Tap>
            </>
          }
        />
      );
    case 'degree':
      return (
        <Sheet
          name="pain"
          where={phone.whatHurts(phone.parts[step.where], step.side)}
          title={phone.howMuch}
          answers={
            <>
              <div class="numbers">
                {Array.from({ length: 11 }, (_, degree) => (
                  <Tap on={() => act({ act: 'degree', degree })}>{degree}</Tap>
                ))}
              </div>
              <Tap on={() => act({ act: 'back' })}>{phone.back}</Tap>
            </>
          }
        >
          <p>{phone.scale}</p>
        </Sheet>
      );
    case 'advice': {
      const over = step.over && step.advice !== 'gently';
      const take = step.advice === 'easier' && !step.easier ? 'leave' : step.advice;
      // Said of no exercise there is none to leave: then it is the session.
      const ofNone = screen.row === null;
      const [first = '', ...more] = over
        ? phone.adviceAfter
        : ofNone && take === 'leave'
          ? phone.adviceBefore
          : phone.advice[take];
      const main = over ? 'gently' : ofNone && take === 'leave' ? 'stop' : take;
      return (
        <Sheet
          name="pain"
          where={phone.whatHurts(phone.parts[step.where], step.side, step.degree)}
          title={first}
          answers={
            <>
              <Tap on={() => act({ act: 'back' })}>{phone.slip}</Tap>
              {take === 'leave' || ofNone || step.over ? null : (
                <Tap on={() => act({ act: 'heed', take: 'leave' })}>{phone.take.leave}</Tap>
              )}
            </>
          }
          bar={
            <>
              {main === 'stop' || !step.stops ? null : (
                <Tap on={() => act({ act: 'heed', take: 'stop' })}>{phone.take.stop}</Tap>
              )}
              <Main on={() => act({ act: 'heed', take: main })}>{over ? phone.goOn : phone.take[main]}</Main>
            </>
          }
        >
          {screen.exercise === null ? null : (
            <p class="set-line">
              <Own shown={shown} text={shown.nameOf(screen.exercise)} />
            </p>
          )}
          <Lines lines={more} />
        </Sheet>
      );
    }
  }
}
