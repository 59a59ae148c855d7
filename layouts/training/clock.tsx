/** The large chalk figures in the margin of a set; what they show is written in by the ticking part, from the clock alone. */
import type { Clock, Moment, SetScreen } from '../../src/model/training.js';

export interface ClockShown {
  readonly over: Moment;
  /** To a beginning, not to an end. */
  readonly leads: boolean;
  /** Another one begins with an element of its own. */
  readonly key: string;
}

/** A hold was begun, and its first second is still to come. */
export const isLeading = ({ rest, clock }: SetScreen, now: Moment): boolean =>
  rest === null && clock.kind === 'timed' && clock.began !== null && clock.began > now;

/** Slow reps that no clock leads: their seconds may be counted. */
export const isCounted = ({ rest, clock, item, figures }: SetScreen): boolean =>
  rest === null && clock.kind === 'none' && figures.set.kind === 'work' && item.tempo !== 'normal';

/** `null` where no clock stands. */
export function clockOn(screen: SetScreen, now: Moment): ClockShown | null {
  const { rest, clock } = screen;
  const plain = (over: Moment): ClockShown => ({ over, leads: false, key: '' });
  if (rest !== null) return plain(rest.over);
  if (clock.kind === 'none' || clock.began === null) return null;
  if (clock.kind === 'work and pause') return plain(clock.began + 1000 * clock.workSeconds);
  if (clock.kind === 'every') return plain(signalAfter(clock, clock.began, now));
  const leads = isLeading(screen, now);
  const over = clock.began + (leads ? 0 : 1000 * clock.seconds);
  return { over, leads, key: `${over}` };
}

/** The next signal of a clock that has begun. */
function signalAfter({ everySeconds }: Extract<Clock, { readonly kind: 'every' }>, began: Moment, now: Moment): Moment {
  const every = 1000 * everySeconds;
  return began + every * (Math.floor(Math.max(0, now - began) / every) + 1);
}

/** `1:23`; `0:00` once it is over. */
export function clockText(over: Moment, now: Moment): string {
  const left = Math.max(0, Math.ceil((over - now) / 1000));
  return `${Math.floor(left / 60)}:${String(left % 60).padStart(2, '0')}`;
}

interface FaceProps {
  readonly clock: ClockShown;
  readonly now: Moment;
}

export const ClockFace = ({ clock: { over, leads }, now }: FaceProps) => (
  <p class={over <= now ? 'clock over' : leads ? 'clock leads' : 'clock'} data-over={over}>
    {clockText(over, now)}
  </p>
);

/** Seconds of one slow lowering, as the engine's rule of that name has them; then it is counted from one again. */
const COUNT_TO = 4;
/** By the time of day alone: whoever looks away comes back to the same count. */
export const countAt = (now: Moment): number => 1 + (Math.floor(now / 1000) % COUNT_TO);

/** The first of a count is underlined. */
export const CountFace = ({ now }: { readonly now: Moment }) => (
  <p class={countAt(now) === 1 ? 'count first' : 'count'}>{countAt(now)}</p>
);
