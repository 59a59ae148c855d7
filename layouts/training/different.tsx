/** What was done in place of what was planned: how many, and with what of one's own kit. */
import { useState } from 'preact/hooks';
import type { PlanLoad } from '../../src/model/plan.js';
import type { DifferentScreen } from '../../src/model/training.js';
import { Main, Own, Sheet, Tap } from './parts.js';
import type { Shown } from './shown.js';

/** Timed and walked sets are told in fives. */
const STEP: Readonly<Record<DifferentScreen['counts'], number>> = { reps: 1, seconds: 5, metres: 5 };

export function DifferentView({ screen, shown }: { readonly screen: DifferentScreen; readonly shown: Shown }) {
  const { act, speech, nameOf } = shown;
  const { phone } = speech.words;
  const { counts, key, loads, marked, figures } = screen;
  const [amount, setAmount] = useState(marked.amount);
  const [load, setLoad] = useState<PlanLoad | undefined>(marked.load);
  const step = STEP[counts];
  return (
    <Sheet
      name="different"
      where={<Own shown={shown} text={nameOf(figures.exercise)} />}
      title={phone.whatWasDone(screen.number)}
      bar={
        <>
          <div class="pair">
            <Tap on={() => act({ act: 'leave out', key })}>{phone.leaveSet}</Tap>
            <Tap on={() => act({ act: 'back' })}>{phone.back}</Tap>
          </div>
          <Main on={() => act({ act: 'say', key, amount, ...(load === undefined ? {} : { load }) })}>
            {phone.keepThis}
          </Main>
        </>
      }
      answers={
        <>
          {loads.length < 2 ? null : (
            <>
              <p class="ask">{phone.whatLifted}</p>
              <div class="loads">
                {loads.map((one) => (
                  <Tap on={() => setLoad(one)} pressed={one.label === load?.label}>
                    {shown.load(one)}
                  </Tap>
                ))}
              </div>
            </>
          )}
          <p class="ask">{phone.howMany[counts]}</p>
          <div class="stepper">
            <button
              type="button"
              class="tap"
              aria-label={phone.fewer}
              onClick={() => setAmount(Math.max(0, amount - step))}
            >
              −
            </button>
            <output class="load lesser" aria-live="polite">
              {amount}
            </output>
            <button type="button" class="tap" aria-label={phone.more} onClick={() => setAmount(amount + step)}>
              +
            </button>
          </div>
        </>
      }
    />
  );
}
