/** What is kept of a booklet beside its marks. What cannot be read is taken as never said. */
import type { PhoneSettings } from '../../model/training.js';

export interface Kept {
  /** The screen as it was left; its reader is the session's. */
  readonly state: unknown;
  readonly settings: PhoneSettings;
  /** The edition this phone showed last; `null` before the first. */
  readonly seenEdition: number | null;
  /** When marks were last passed on; milliseconds since 1970. */
  readonly passedAt: number | null;
}

const FIRST_SETTINGS: PhoneSettings = {
  leftHand: false,
  sound: false,
  vibration: false,
  tempo: false,
  awake: true,
  units: 'as printed',
};

export const NOTHING_KEPT: Kept = { state: null, settings: FIRST_SETTINGS, seenEdition: null, passedAt: null };

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null;
const numberOr = (value: unknown): number | null =>
  typeof value === 'number' && Number.isFinite(value) ? value : null;

export function readKept(value: unknown): Kept {
  if (!isRecord(value)) return NOTHING_KEPT;
  return {
    state: value.state ?? null,
    settings: readSettings(value.settings),
    seenEdition: numberOr(value.seenEdition),
    passedAt: numberOr(value.passedAt),
  };
}

function readSettings(value: unknown): PhoneSettings {
  if (!isRecord(value)) return FIRST_SETTINGS;
  const { units } = value;
  return {
    leftHand: value.leftHand === true,
    sound: value.sound === true,
    vibration: value.vibration === true,
    tempo: value.tempo === true,
    awake: value.awake !== false,
    units: units === 'kg' || units === 'lb' ? units : 'as printed',
  };
}
