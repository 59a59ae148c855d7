/** The large chalk figures in the margin of a set; what they show is written in by the ticking part, from the clock alone. */
import type { Clock, Moment, SetScreen } from '../../src/model/training.js';

export interface ClockShown {
  readonly over: Moment;
  /** The signal by which this began, shown for a moment beside being felt or heard; `null` where a rest was begun by hand. */
  readonly since: Moment | null;
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
  const plain = (over: Moment, since: Moment | null): ClockShown => ({ over, since, leads: false, key: '' });
  if (rest !== null) return plain(rest.over, null);
  if (clock.kind === 'none' || clock.began === null) return null;
  if (clock.kind === 'every') {
    const over = signalAfter(clock, clock.began, now);
    return plain(over, over - 1000 * clock.everySeconds);
  }
  if (clock.kind === 'work and pause') return plain(clock.began + 1000 * clock.workSeconds, clock.began);
  const leads = isLeading(screen, now);
  const over = clock.began + (leads ? 0 : 1000 * clock.seconds);
  return { over, since: leads ? null : clock.began, leads, key: `${over}` };
}

/** A hold, or work that goes by the clock, has run out. */
export const isUp = ({ rest, clock }: SetScreen, now: Moment): boolean => {
  if (rest !== null || (clock.kind !== 'timed' && clock.kind !== 'work and pause') || clock.began === null)
    return false;
  return clock.began + 1000 * lastsFor(clock) <= now;
};

/** Seconds of what runs. */
export const lastsFor = (clock: Extract<Clock, { readonly kind: 'timed' | 'work and pause' }>): number =>
  clock.kind === 'timed' ? clock.seconds : clock.workSeconds;

/** The next signal of a clock that has begun. */
function signalAfter({ everySeconds }: Extract<Clock, { readonly kind: 'every' }>, began: Moment, now: Moment): Moment {
  const every = 1000 * everySeconds;
  return began + every * (Math.floor(Math.max(0, now - began) / every) + 1);
}

export const secondsLeft = (over: Moment, now: Moment): number => Math.max(0, Math.ceil((over - now) / 1000));

/** `1:23`; `0:00` once it is over. */
function clockText(over: Moment, now: Moment): string {
  const left = secondsLeft(over, now);
  return `${Math.floor(left / 60)}:${String(left % 60).padStart(2, '0')}`;
}

/** Figures and shape: what sounds changes both of them in its own frame. */
export interface Face {
  readonly text: string;
  readonly name: string;
}

/** How long a signal is seen: as long as a beat, or as long as it takes to look up. */
const SEEN_MS = { beats: 1000, silent: 3000 } as const;

/** Over is underlined twice, a signal once and heavily, and every other beat once and thinly. */
export function clockFace({ over, since, beats }: ClockFaced, now: Moment): Face {
  const struck = since !== null && now - since < (beats ? SEEN_MS.beats : SEEN_MS.silent);
  const odd = beats && secondsLeft(over, now) % 2 === 1;
  const shape = over <= now ? ' over' : struck ? ' struck' : odd ? ' beat' : '';
  return { text: clockText(over, now), name: `clock${shape}` };
}

export interface ClockFaced extends Pick<ClockShown, 'over' | 'since'> {
  /** Its seconds are counted aloud. */
  readonly beats: boolean;
}

interface FaceProps {
  readonly clock: ClockShown;
  readonly beats: boolean;
  readonly now: Moment;
}

export function ClockFigures({ clock: { over, since, leads }, beats, now }: FaceProps) {
  const counted = beats && !leads;
  const { text, name } = clockFace({ over, since, beats: counted }, now);
  return (
    <p class={name} data-over={over} data-since={since} data-beats={counted}>
      {text}
    </p>
  );
}

/** What a clock that stands on the page was given. */
export const readClock = ({ dataset: { over, since, beats } }: HTMLElement): ClockFaced => ({
  over: Number(over),
  since: since === undefined ? null : Number(since),
  beats: beats === 'true',
});

/** Seconds of one slow lowering, as the engine's rule of that name has them; then it is counted from one again. */
const COUNT_TO = 4;
/** By the time of day alone: whoever looks away comes back to the same count. */
export const countAt = (now: Moment): number => 1 + (Math.floor(now / 1000) % COUNT_TO);

/** The first of a count is underlined heavily, the third thinly. */
export function countFace(now: Moment): Face {
  const count = countAt(now);
  return { text: `${count}`, name: count === 1 ? 'count struck' : count % 2 === 1 ? 'count beat' : 'count' };
}

export function CountFigures({ now }: { readonly now: Moment }) {
  const { text, name } = countFace(now);
  return <p class={name}>{text}</p>;
}
