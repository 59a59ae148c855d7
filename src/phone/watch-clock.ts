/**
 * The clock that stands on the screen, if one does: its figures follow the time of day, whether the phone slept or not, and
 * its end is told once.
 */
import { clockText } from '../../layouts/training/set.js';

/** How often it is looked at while it stands. */
const LOOK_MS = 200;
/** An end that nobody saw, and that is older than this, is shown and not told. */
const LATE_MS = 3000;

export interface Watched {
  readonly mount: HTMLElement;
  readonly isOn: () => boolean;
  /** A second of work has gone by. */
  readonly beat: () => void;
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
    const clock = mount.querySelector<HTMLElement>('.clock');
    if (clock === null || !isOn()) return;
    const over = Number(clock.dataset.over);
    clock.textContent = clockText(over, now);
    const second = Math.floor(now / 1000);
    if (second !== lastBeat) {
      lastBeat = second;
      if (over > now && !clock.matches('.leads') && mount.querySelector('.resting') === null) beat();
    }
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
