/** English for numbers, dates, sides, loads and doses. */
import type { DateParts, DateWords, DoseWords, LoadWords, NumberWords } from './catalogue.js';
import { MONTHS } from './english-months.js';
import { listed } from './listed.js';
import { NO_BREAK, unbroken } from './spacing.js';

const WEEKDAYS = { 1: 'Mon', 2: 'Tue', 3: 'Wed', 4: 'Thu', 5: 'Fri', 6: 'Sat', 7: 'Sun' } as const;

const monthOf = (date: DateParts): string => MONTHS[date.month - 1] ?? '';
const dayAndMonth = (date: DateParts): string => `${date.day}${NO_BREAK}${monthOf(date)}`;

export const englishNumbers: NumberWords = {
  decimal: '.',
  counted: (count, unit) => `${count}${NO_BREAK}${count === '1' ? unit.replace(/s$/, '') : unit}`,
};

export const englishSides = { left: 'left', right: 'right', both: 'both' } as const;

export const englishDates: DateWords = {
  short: (date) => unbroken(`${WEEKDAYS[date.weekday]} ${date.day} ${monthOf(date).slice(0, 3)}`),
  full: (date) => `${dayAndMonth(date)} ${date.year}`,
  span: (from, to) => {
    const start = from.year === to.year ? dayAndMonth(from) : `${dayAndMonth(from)} ${from.year}`;
    return `${start} to ${dayAndMonth(to)} ${to.year}`;
  },
};

/** `1 set`, `3 sets`. */
export const counted = (count: number | string, one: string, many: string): string =>
  `${count}${NO_BREAK}${String(count) === '1' ? one : many}`;

export const englishLoads: LoadWords = {
  spokenUnit: {
    kg: (figure) => (figure === '1' ? '1 kilogram' : `${figure} kilograms`),
    lb: (figure) => (figure === '1' ? '1 pound' : `${figure} pounds`),
  },
  spokenPair: (count, load) => `${count} times ${load}`,
  spokenAdded: (load) => `plus ${load}`,
  spokenOther: (load, other) => `${load}, about ${other}`,
  kind: {
    bell: 'bell',
    dumbbell: 'dumbbell',
    handle: 'handle',
    bar: 'bar',
    plate: 'plate',
    band: 'band',
    bench: 'bench',
    step: 'step',
    chair: 'chair',
    wall: 'wall',
    mat: 'mat',
    box: 'box',
  },
  pieces: (first, rest) => [first, ...rest].join(' + '),
};

export const englishDoses: DoseWords = {
  reps: (count) => counted(count, 'rep', 'reps'),
  seconds: (count) => `${count}${NO_BREAK}s`,
  minutes: (count) => `${count}${NO_BREAK}min`,
  metres: (count) => `${count}${NO_BREAK}m`,
  spokenRange: (least, most) => `${least} to ${most}`,
  spokenReps: (count) => (count === '1' ? '1 rep' : `${count} reps`),
  spokenSeconds: (count) => (count === '1' ? '1 second' : `${count} seconds`),
  spokenMinutes: (count) => (count === '1' ? '1 minute' : `${count} minutes`),
  spokenMetres: (count) => (count === '1' ? '1 metre' : `${count} metres`),
  sets: (count) => counted(count, 'set', 'sets'),
  rounds: (count) => counted(count, 'round', 'rounds'),
  eachSide: (dose) => `${dose} each side`,
  oneSide: (dose, side) => `${dose} on the ${side} alone`,
  every: (minutes, reps, everySeconds) =>
    `${minutes}${NO_BREAK}min: ${reps} every ${everySeconds === 60 ? 'minute' : `${everySeconds}${NO_BREAK}s`}`,
  mainNext: (main, next) => `${main} with the main bell, then ${next} with the next up`,
  steps: (reps, times) => `${reps}, ${times} times through`,
  spokenSteps: (reps) => `${listed(reps.map(String), 'then')} reps`,
  followed: (first, next) => `${first}, then${NO_BREAK}${next}`,
  thenLoad: (load) => `then ${load}`,
  test: (of) => (of === '' ? 'Test' : `Test, ${of}`),
  ofSide: (side, dose) => `${side} ${dose}`,
  withSets: (dose, sets) => `${dose}, ${counted(sets, 'set', 'sets')}`,
};
