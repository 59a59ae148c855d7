/** Before the next session, of what hurt in the last: one question, with what follows from it said beforehand. */
import type { MorningScreen } from '../../src/model/training.js';
import { sayDate } from '../../src/words/say-date.js';
import { Lines, Sheet, Tap } from './parts.js';
import type { Shown } from './shown.js';

export function MorningView({ screen, shown }: { readonly screen: MorningScreen; readonly shown: Shown }) {
  const { act, speech } = shown;
  const { phone } = speech.words;
  return (
    <Sheet
      name="question"
      where={phone.whatHurts(phone.parts[screen.where], screen.side, screen.degree)}
      title={phone.worseNextMorning}
      answers={
        <>
          <Tap on={() => act({ act: 'morning', worse: true })}>{phone.wasWorse}</Tap>
          <Tap on={() => act({ act: 'morning', worse: false })}>{phone.notWorse}</Tap>
          <Tap on={() => act({ act: 'morning', worse: null })}>{phone.notSaid}</Tap>
        </>
      }
    >
      <p>{phone.hurtOn(sayDate(screen.date, speech))}</p>
      <Lines lines={phone.ifWorse[screen.advice]} />
    </Sheet>
  );
}
