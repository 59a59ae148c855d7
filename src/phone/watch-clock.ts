/**
 * The clock or the count that stands on the screen, if one does: its figures follow the time of day, whether the phone slept or not, and
 * its end is told once.
 */
import { clockFace, countAt, countFace, type Face, readClock, secondsLeft } from '../../layouts/training/clock.js';

/** How often it is looked at while it stands. */
const LOOK_MS = 200;
/** An end older than this is told only to whoever looks at the page; else it is shown, and not told. */
const LATE_MS = 3000;
/** Clocks are put right by fractions of a second all the time; from here on one was put back. */
const PUT_BACK_MS = 2000;

export interface Watched {
  readonly mount: HTMLElement;
  readonly isOn: () => boolean;
  /** A second of work has gone by; the first of those that are counted, or none of them. */
  readonly beat: (first: boolean) => void;
  /** It has just ended: draws what follows. */
  readonly ended: () => void;
  /** The time of day was put back: what was told from a moment that is to come again is told from now. */
  readonly putBack: (now: number) => void;
  /** The same, to be told beside being shown. */
  readonly tell: (over: number) => void;
}

/** Answers with what looks at it at once. */
export function watchClock({ mount, isOn, beat, ended, putBack, tell }: Watched): () => void {
  /** The end that was told last: a moment, so that none is told twice. */
  let told = 0;
  let lastCount = 0;
  /** The second of which clock was looked at last. */
  let last = { over: 0, left: 0 };
  let lastLook = 0;

  const lookAtCount = (count: HTMLElement, now: number): void => {
    const second = Math.floor(now / 1000);
    show(count, countFace(now));
    if (second !== lastCount && document.visibilityState === 'visible') beat(countAt(now) === 1);
    lastCount = second;
  };

  const look = (): void => {
    const now = Date.now();
    if (now + PUT_BACK_MS < lastLook) putBack(now);
    lastLook = now;
    if (!isOn()) return;
    const count = mount.querySelector<HTMLElement>('.count');
    if (count !== null) lookAtCount(count, now);
    const clock = mount.querySelector<HTMLElement>('.clock');
    if (clock === null) return;
    const given = readClock(clock);
    const { over } = given;
    const left = secondsLeft(over, now);
    show(clock, clockFace(given, now));
    if (given.beats && left > 0 && over === last.over && left !== last.left) beat(false);
    last = { over, left };
    if (over > now || told === over) return;
    told = over;
    ended();
    // Shown in the same frame as it sounds, whatever has been drawn since.
    const drawn = mount.querySelector<HTMLElement>('.clock');
    if (drawn !== null) show(drawn, clockFace(readClock(drawn), now));
    if (now - over <= LATE_MS || document.visibilityState === 'visible') tell(over);
  };

  setInterval(look, LOOK_MS);
  return look;
}

function show(element: HTMLElement, { text, name }: Face): void {
  element.textContent = text;
  element.className = name;
}
