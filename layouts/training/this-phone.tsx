/** What this phone does, for whoever holds it: hand, sounds, units, and the marks it keeps. */
import type { PhoneScreen, PhoneSettings } from '../../src/model/training.js';
import { Lines, Main, Sheet, Tap } from './parts.js';
import type { Shown } from './shown.js';

const SWITCHES = ['leftHand', 'sound', 'vibration', 'tempo', 'awake'] as const;
const UNITS: readonly PhoneSettings['units'][] = ['as printed', 'kg', 'lb'];

export function ThisPhoneView({ screen, shown }: { readonly screen: PhoneScreen; readonly shown: Shown }) {
  const { act, speech, pass } = shown;
  const { phone } = speech.words;
  const { settings, fault, persisted } = screen;
  const set = (part: Partial<PhoneSettings>): void => act({ act: 'set', settings: { ...settings, ...part } });
  return (
    <Sheet
      name="this-phone"
      title={phone.thisPhone}
      bar={<Main on={() => act({ act: 'back' })}>{phone.back}</Main>}
      answers={
        <>
          {SWITCHES.map((name) => (
            <button
              type="button"
              class="tap switch"
              role="switch"
              aria-checked={settings[name]}
              onClick={() => set({ [name]: !settings[name] })}
            >
              {phone[name]}
            </button>
          ))}
          <p>{phone.lockedNote}</p>
          <p class="ask">{phone.units}</p>
          <div class="loads">
            {UNITS.map((units) => (
              <Tap on={() => set({ units })} pressed={settings.units === units}>
                {phone.unit[units]}
              </Tap>
            ))}
          </div>
          <p>{phone.marksKept(screen.marks)}</p>
          {fault === null ? (
            <p>{persisted === true ? phone.persisted : phone.notPersisted}</p>
          ) : (
            <Lines lines={phone.cannotKeep[fault]} />
          )}
          <Tap on={() => pass('save')}>{phone.saveMarks}</Tap>
        </>
      }
    />
  );
}
