/** Easier ways open today, with their figures. */
import type { EasierScreen } from '../../src/model/training.js';
import { Own, Sheet, Tap } from './parts.js';
import type { Shown } from './shown.js';

export function EasierView({ screen, shown }: { readonly screen: EasierScreen; readonly shown: Shown }) {
  const { act, speech, dose, nameOf } = shown;
  const { phone } = speech.words;
  return (
    <Sheet
      name="question"
      where={<Own shown={shown} text={nameOf(screen.exercise)} />}
      title={phone.easierWays}
      answers={
        <>
          {screen.options.map((easier) => (
            <Tap on={() => act({ act: 'choose easier', easier })} pressed={easier.say === screen.chosen?.say}>
              <Own
                shown={shown}
                text={
                  easier.exercise === undefined || easier.exercise.includes('#') ? easier.say : nameOf(easier.exercise)
                }
              />
              {easier.set === undefined ? null : <b> {dose(easier.set)}</b>}
            </Tap>
          ))}
          <Tap on={() => act({ act: 'choose easier', easier: null })}>{phone.asPlanned}</Tap>
          <Tap on={() => act({ act: 'back' })}>{phone.back}</Tap>
        </>
      }
    />
  );
}
