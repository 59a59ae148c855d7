/** One set of a plan as its client does it: load, amount, what follows straight on, and whether it is a test. */
import type { LoadText } from '../model/booklet.js';
import type { PlanSet } from '../model/plan.js';
import { type SetSpeech, sayAmount, saySet, saySetAloud, stackSet } from './say-dose.js';
import { isLoaded, type KitLabels, sayLoad, sayLoadAloud, sayLoadText } from './say-load.js';
import { unbroken } from './spacing.js';

export interface SaidSet {
  readonly load?: LoadText;
  readonly amount: string;
  readonly text: string;
  readonly spoken: string;
  /** Short lines for a narrow column. */
  readonly stack: readonly string[];
}

/** Of a set, what is lifted and how much of it; so what a gate needs, and what is done otherwise, are said like a set. */
export type Lifted = Pick<PlanSet, 'load' | 'reps' | 'seconds' | 'metres' | 'steps' | 'then'> &
  Partial<Pick<PlanSet, 'kind'>>;

export function sayPlanned(set: Lifted, kit: KitLabels, speech: SetSpeech): SaidSet {
  const load = sayLoad(set.load, kit, speech);
  const held = isLoaded(load) ? { load } : {};
  if (set.kind === 'test') return { ...held, ...sayTest(load, set, speech) };
  if (isRound(set)) return { ...held, ...sayRound(load, speech) };
  const own = {
    amount: sayAmount(set, speech),
    text: saySet(load, set, speech),
    spoken: saySetAloud(load, set, speech),
    stack: stackSet(load, set, speech),
  };
  if (set.then === undefined) return { ...held, ...own };
  const { doses } = speech.words;
  const next = sayLoad(set.then.load, kit, speech);
  const [nextLoad = '', ...nextAmount] = stackSet(next, set.then, speech);
  return {
    ...held,
    amount: own.amount,
    // The second load and its reps stay on one line.
    text: doses.followed(own.text, unbroken(saySet(next, set.then, speech))),
    spoken: doses.followed(own.spoken, saySetAloud(next, set.then, speech)),
    stack: [...own.stack, doses.thenLoad(nextLoad), ...nextAmount],
  };
}

/** One round of what the exercise itself describes. */
const isRound = ({ reps, seconds, metres }: Lifted): boolean =>
  reps === undefined && seconds === undefined && metres === undefined;

function sayRound(load: LoadText, speech: SetSpeech): Omit<SaidSet, 'load'> {
  const amount = speech.words.doses.rounds(1);
  const held = isLoaded(load);
  return {
    amount,
    text: held ? `${speech.hold(sayLoadText(load))}, ${amount}` : amount,
    spoken: held ? `${sayLoadAloud(load, speech)}, ${amount}` : amount,
    stack: held ? [sayLoadText(load), amount] : [amount],
  };
}

/** No number of reps is asked for: the test is to find it. A time is part of it. */
function sayTest(load: LoadText, { seconds }: Lifted, speech: SetSpeech): Omit<SaidSet, 'load'> {
  const { doses } = speech.words;
  const time = seconds === undefined ? [] : [doses.seconds(`${seconds}`)];
  const aloud = seconds === undefined ? [] : [doses.spokenSeconds(`${seconds}`)];
  const held = isLoaded(load);
  return {
    amount: time.join(''),
    text: doses.test([...(held ? [speech.hold(sayLoadText(load))] : []), ...time].join(', ')),
    spoken: doses.test([...(held ? [sayLoadAloud(load, speech)] : []), ...aloud].join(', ')),
    stack: [doses.test(''), ...(held ? [sayLoadText(load)] : []), ...time],
  };
}
