/** The one spelling of each dose; `read-dose.ts` reads it back to the same. */
import type { Dose } from '../model/dose.js';
import { writeRange } from './read-amounts.js';

/** Outside a circuit: `3 × 8–12`, `4 × 6 each side`, `3 × 20–40 s`, `10 min: 8 every 90 s`, … */
export function writeDose(dose: Dose): string {
  switch (dose.kind) {
    case 'sets':
    case 'timed':
    case 'distance':
      return `${dose.sets} × ${writeCircuitDose(dose)}`;
    case 'every': {
      const gap = dose.everySeconds === 60 ? 'minute' : `${dose.everySeconds} s`;
      return `${dose.minutes} min: ${dose.reps} every ${gap}`;
    }
    case 'main-next':
      return `${dose.main} main + ${dose.next} next up`;
    case 'steps':
      return `${dose.reps.join('-')} × ${dose.times}`;
    case 'rounds':
      return dose.rounds === 1 ? '1 round' : `${dose.rounds} rounds`;
  }
}

/** Inside a circuit, where the rounds are the sets: `8–12`, `6 each side`, `30 s`. */
export function writeCircuitDose(dose: Extract<Dose, { kind: 'sets' | 'timed' | 'distance' }>): string {
  const each = dose.eachSide ? ' each side' : '';
  if (dose.kind === 'timed') return `${writeRange(dose.seconds)} s${each}`;
  if (dose.kind === 'distance') return `${writeRange(dose.metres)} m${each}`;
  return `${writeRange(dose.reps)}${each}`;
}
