/**
 * The clock or the count that stands on the screen, if one does: its figures follow the time of day, whether the phone slept or not, and
 * its end is told once.
 */
import { clockText, countAt } from '../../layouts/training/clock.js';

/** How often it is looked at while it stands. */
const LOOK_MS = 200;
/** An end that nobody saw, and that is older than this, is shown and not told. */
const LATE_MS = 3000;

export interface Watched {
  readonly mount: HTMLElement;
  readonly isOn: () => boolean;
  /** A second of work has gone by; the first of those that are counted, or none of them. */
  readonly beat: (first: boolean) => void;
  /** It has just ended: draws what follows. `over` is the moment of its end. */
  readonly ended: (over: number) => void;
  /** The same, to be told beside being shown. */
  readonly tell: (over: number) => void;
}

/** Answers with what looks at it at once. */
export function watchClock({ mount, isOn, beat, ended, tell }: Watched): () => void {
  /** The end that was told last: a moment, so that none is told twice. */
  let told = 0;
  let lastBeat = 0;

  const look = (): void => {
    const now = Date.now();
    if (!isOn()) return;
    const second = Math.floor(now / 1000);
    const isNew = second !== lastBeat;
    lastBeat = second;
    const count = mount.querySelector<HTMLElement>('.count');
    if (count !== null && isNew) {
      count.textContent = `${countAt(now)}`;
      count.classList.toggle('first', countAt(now) === 1);
      if (document.visibilityState === 'visible') beat(countAt(now) === 1);
    }
    const clock = mount.querySelector<HTMLElement>('.clock');
    if (clock === null) return;
    const over = Number(clock.dataset.over);
    clock.textContent = clockText(over, now);
    if (isNew && over > now && !clock.matches('.leads') && mount.querySelector('.resting') === null) beat(false);
    if (over > now || told === over) return;
    told = over;
    ended(over);
    // Shown in the same frame as it sounds, whatever has been drawn since.
    clock.classList.toggle('over', Number(clock.dataset.over) <= now);
    if (now - over <= LATE_MS || document.visibilityState === 'visible') tell(over);
  };

  setInterval(look, LOOK_MS);
  return look;
}
