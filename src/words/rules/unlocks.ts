/** What would open an option that a rule refuses, where the coach can do something about it or wait for something. */
import { clause, type Figure, type Saying, spoken } from '../rule-words.js';

/** How many more are needed than are earned; `0` where the reason does not say. */
const missing = (f: Figure): number => Math.max(0, Number(f('needed') || 0) - Number(f('earned') || 0));

const sessions = (f: Figure): string => {
  const n = missing(f);
  const more = n === 0 ? 'Good sessions' : n === 1 ? 'One more good session' : 'Two more good sessions running';
  return `${more} at the top of the range`;
};

const reach = (f: Figure): string =>
  clause(f('bottom'), (bottom) => `${Number(bottom) + Number(f('floor'))} reps to failure there`) ||
  'more reps to failure';

const WRITTEN: Readonly<Record<string, Saying>> = {
  'walk-held': 'It opens once that is past.',
  'walk-derived': 'A body mass on file, or a test of that version, opens it.',
  'walk-earned-once': (f) => `${sessions(f)} would open it.`,
  'walk-earned-twice': (f) => `${sessions(f)}, or a good trial set, would open it.`,
  'walk-weak-twice': (f) => `${sessions(f)}, or a test of fewer reps, would open it.`,
  'walk-slower-earned': (f) => `${sessions(f)} would open it.`,
  'walk-gate-once': 'The next edition may offer it.',
  'walk-no-trial-after-gate': 'The next edition may offer it.',
  'walk-tempi-used-up': 'The slower tempi come first.',
  'walk-weak-no-rise': 'A test of fewer reps would open it.',
  'walk-bottom-and-floor': (f) => `It opens at ${reach(f)}.`,
  'walk-bottom-and-asked': 'It opens when the bottom of the range leaves the reserve asked for there.',
  'walk-slower-leaves-floor': (f) => `It opens at ${reach(f)}.`,
  'walk-trial-in-range': (f) => `A try opens at ${reach(f)}.`,
  'walk-trial-margin': (f) =>
    clause(f('floor'), (floor) => `A try opens at ${Number(floor) + Number(f('margin'))} reps to failure there.`) ||
    'A try opens with more reps to failure there.',
  'walk-trial-allowed': 'Allowing trials in this row of the programme would open it.',
  'walk-trial-two-sets': 'A second set in this row would open it.',
  'walk-trial-once-a-week': 'The next week may try it.',
  'walk-trial-waits': 'It opens once the trial has become a rise, or is closed.',
  'ladder-earned': 'Doing this step as asked, as often as it takes, opens it.',
  'ladder-gate-once': 'The next edition may offer it.',
  'ladder-held': 'It opens once that is past.',
};

/** Empty where nothing is said of it. */
export const sayUnlock = (rule: string, figure: Figure): string =>
  Object.hasOwn(WRITTEN, rule) ? spoken(WRITTEN[rule] ?? '')(figure) : '';
