/** Warming up and cooling down: the booklet's own lines, and one button. */
import type { AroundScreen } from '../../src/model/training.js';
import { LeftOut } from './left-out.js';
import { Again, Hurts, Main, Own, Sheet, Tap } from './parts.js';
import type { Shown } from './shown.js';

export function AroundView({ screen, shown }: { readonly screen: AroundScreen; readonly shown: Shown }) {
  const { act, speech, around, sessionTitle, nameOf } = shown;
  const { phone } = speech.words;
  const lines = around(screen.place, screen.kind);
  return (
    <Sheet
      name="around"
      where={sessionTitle(screen.place)}
      title={phone.around[screen.kind]}
      bar={
        <>
          <div class="pair">
            <Hurts shown={shown} />
            <Tap on={() => act({ act: 'around', done: false })}>{phone.passBy}</Tap>
          </div>
          <Main on={() => act({ act: 'around', done: true })}>
            {screen.kind === 'warm-up' ? phone.warmedUp : phone.cooledDown}
          </Main>
        </>
      }
    >
      <LeftOut all={screen.leftOut} shown={shown} />
      {screen.minutes === null || lines.length > 0 ? null : <p>{phone.about(screen.minutes)}</p>}
      {lines.length > 0 ? (
        <Again nodes={lines} name="around-lines" />
      ) : (
        <ul>
          {screen.items.map(({ exercise, sets: [first] }) => (
            <li>
              <Own shown={shown} text={nameOf(exercise)} /> {first === undefined ? '' : shown.dose(first)}
            </li>
          ))}
        </ul>
      )}
    </Sheet>
  );
}
