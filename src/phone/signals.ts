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

/** A second of a slow rep. */
export function signalBeat({ sound, vibration, tempo }: PhoneSettings): void {
  if (!tempo) return;
  if (sound) tone(440, 0.08);
  if (vibration) navigator.vibrate?.(40);
}

let lock: WakeLockSentinel | null = null;

/** Where the browser offers it; given up when the page goes to the back, and asked for again when it returns. */
export async function keepAwake(wanted: boolean): Promise<void> {
  if (!wanted) {
    const held = lock;
    lock = null;
    await held?.release().catch(() => undefined);
    return;
  }
  if (lock !== null && !lock.released) return;
  if (document.visibilityState !== 'visible' || !('wakeLock' in navigator)) return;
  lock = await navigator.wakeLock.request('screen').catch(() => null);
}
