/** Sound, vibration and a screen that stays on: helps beside what is seen, never in its place, and never a condition of it. */
import type { PhoneSettings } from '../model/training.js';

let audio: AudioContext | null = null;

/** From within a tap: browsers let nothing sound that no hand asked for. */
export function allowSound({ sound, tempo }: PhoneSettings): void {
  if (!sound && !tempo) return;
  try {
    audio ??= new AudioContext();
    if (audio.state === 'suspended') audio.resume().catch(() => undefined);
  } catch {
    audio = null;
  }
}

/** Hertz and seconds: a plain tone that dies away. */
function tone(pitch: number, length: number): void {
  if (audio === null || audio.state !== 'running') return;
  const from = audio.currentTime;
  const sounding = audio.createOscillator();
  const loudness = audio.createGain();
  sounding.frequency.value = pitch;
  loudness.gain.setValueAtTime(0.3, from);
  loudness.gain.exponentialRampToValueAtTime(0.001, from + length);
  sounding.connect(loudness).connect(audio.destination);
  sounding.start(from);
  sounding.stop(from + length);
}

/** Rest or time is over, or it is time for the next set. */
export function signalEnd({ sound, vibration }: PhoneSettings): void {
  if (sound) tone(880, 0.6);
  if (vibration) navigator.vibrate?.([200, 100, 200]);
}

/** A second of work or of a slow rep; the first of a count sounds higher and lasts longer. */
export function signalBeat({ sound, vibration, tempo }: PhoneSettings, first: boolean): void {
  if (!tempo) return;
  if (sound) tone(first ? 660 : 440, 0.08);
  if (vibration) navigator.vibrate?.(first ? 90 : 40);
}

let lock: WakeLockSentinel | null = null;
let wished = false;
let settling = false;

/**
 * Where the browser offers it; given up when the page goes to the back, and asked for again when it returns. One at a time
 * asks: of two locks held at once, one would never be given back.
 */
export async function keepAwake(wanted: boolean): Promise<void> {
  wished = wanted;
  if (settling) return;
  settling = true;
  let met: boolean;
  do {
    met = wished;
    if (!met) {
      const held = lock;
      lock = null;
      await held?.release().catch(() => undefined);
    } else if ((lock === null || lock.released) && document.visibilityState === 'visible' && 'wakeLock' in navigator) {
      lock = await navigator.wakeLock.request('screen').catch(() => null);
    }
    // Whoever left the set meanwhile wants it no longer.
  } while (met !== wished);
  settling = false;
}
