/** Norwegian bokmål for numbers, dates, sides, loads and doses, and how its words bend after a number. */
import type { DateParts, DateWords, DoseWords, LoadWords, NumberWords } from './catalogue.js';
import { listed } from './listed.js';
import { NO_BREAK, unbroken } from './spacing.js';

/** `1 økt`, `3 økter`; one form follows 1, and the other every other number. */
export const counted = (count: number | string, one: string, many: string): string =>
  `${count}${NO_BREAK}${String(count) === '1' ? one : many}`;

/** Before a noun: `venstre side`. */
export const SIDES = { left: 'venstre', right: 'høyre' } as const;
export const norwegianSides = { ...SIDES, both: 'begge' } as const;

const UNITS: Readonly<Record<string, readonly [string, string]>> = {
  days: ['dag', 'dager'],
  weeks: ['uke', 'uker'],
  years: ['år', 'år'],
  minutes: ['minutt', 'minutter'],
  sessions: ['økt', 'økter'],
  sets: ['sett', 'sett'],
  rounds: ['runde', 'runder'],
  loads: ['vekt', 'vekter'],
  exercises: ['øvelse', 'øvelser'],
  metres: ['meter', 'meter'],
  stands: ['gang', 'ganger'],
  falls: ['fall', 'fall'],
};

export const norwegianNumbers: NumberWords = {
  decimal: ',',
  counted: (count, unit) => {
    const [one, many] = UNITS[unit] ?? [unit, unit];
    return counted(count, one, many);
  },
};

/** In a list or a table, where no full stop stands after a short form. */
const WEEKDAYS = { 1: 'man', 2: 'tir', 3: 'ons', 4: 'tor', 5: 'fre', 6: 'lør', 7: 'søn' } as const;

const MONTHS = [
  'januar',
  'februar',
  'mars',
  'april',
  'mai',
  'juni',
  'juli',
  'august',
  'september',
  'oktober',
  'november',
  'desember',
];

const monthOf = (date: DateParts): string => MONTHS[date.month - 1] ?? '';
const dayAndMonth = (date: DateParts): string => `${date.day}.${NO_BREAK}${monthOf(date)}`;

export const norwegianDates: DateWords = {
  short: (date) => unbroken(`${WEEKDAYS[date.weekday]} ${date.day}. ${monthOf(date).slice(0, 3)}`),
  full: (date) => `${dayAndMonth(date)} ${date.year}`,
  span: (from, to) => {
    const start = from.year === to.year ? dayAndMonth(from) : `${dayAndMonth(from)} ${from.year}`;
    return `${start} til ${dayAndMonth(to)} ${to.year}`;
  },
};

export const norwegianLoads: LoadWords = {
  spokenUnit: {
    kg: (figure) => `${figure} kilo`,
    lb: (figure) => `${figure} pund`,
  },
  spokenPair: (count, load) => `${count} ganger ${load}`,
  spokenAdded: (load) => `pluss ${load}`,
  spokenOther: (load, other) => `${load}, omtrent ${other}`,
  kind: {
    bell: 'kule',
    dumbbell: 'manual',
    handle: 'håndtak',
    bar: 'stang',
    plate: 'skive',
    band: 'strikk',
    bench: 'benk',
    step: 'trinn',
    chair: 'stol',
    wall: 'vegg',
    mat: 'matte',
    box: 'kasse',
  },
  pieces: (first, rest) => [first, ...rest].join(' + '),
};

export const norwegianDoses: DoseWords = {
  reps: (count) => counted(count, 'rep', 'reps'),
  seconds: (count) => `${count}${NO_BREAK}s`,
  minutes: (count) => `${count}${NO_BREAK}min`,
  metres: (count) => `${count}${NO_BREAK}m`,
  spokenRange: (least, most) => `${least} til ${most}`,
  spokenReps: (count) => (count === '1' ? '1 repetisjon' : `${count} repetisjoner`),
  spokenSeconds: (count) => (count === '1' ? '1 sekund' : `${count} sekunder`),
  spokenMinutes: (count) => (count === '1' ? '1 minutt' : `${count} minutter`),
  spokenMetres: (count) => `${count} meter`,
  sets: (count) => counted(count, 'sett', 'sett'),
  rounds: (count) => counted(count, 'runde', 'runder'),
  eachSide: (dose) => `${dose} per side`,
  oneSide: (dose, side) => `${dose} bare på ${SIDES[side]} side`,
  every: (minutes, reps, everySeconds) =>
    `${minutes}${NO_BREAK}min: ${reps} ${everySeconds === 60 ? 'hvert minutt' : `hvert ${everySeconds}.${NO_BREAK}sekund`}`,
  mainNext: (main, next) => `${main} med den vanlige kulen, så ${next} med den neste opp`,
  steps: (reps, times) => `${reps}, ${times}${NO_BREAK}ganger gjennom`,
  spokenSteps: (reps) => `${listed(reps.map(String), 'så')} repetisjoner`,
  followed: (first, next) => `${first}, så${NO_BREAK}${next}`,
  thenLoad: (load) => `så ${load}`,
  test: (of) => (of === '' ? 'Test' : `Test, ${of}`),
  ofSide: (side, dose) => `${side} ${dose}`,
  withSets: (dose, sets) => `${dose}, ${counted(sets, 'sett', 'sett')}`,
};
