/** English for doses, loads and the short lines beside an exercise. */
import { BODY_PARTS, type BodyPart, type Cause } from '../model/exercise.js';
import type { DateParts, DateWords, DoseWords, LoadWords, NumberWords, SetWords } from './catalogue.js';
import { MONTHS } from './english-months.js';
import { inSentence, inSentenceWhole } from './in-sentence.js';
import { listed } from './listed.js';
import { NO_BREAK, unbroken } from './spacing.js';
import { weekRuns } from './week-runs.js';

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

const counted = (count: number | string, one: string, many: string): string =>
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

/** `weeks 1 to 4 and 6`. */
const weekList = (weeks: readonly number[]): string =>
  `${weeks.length === 1 ? 'week' : 'weeks'}${NO_BREAK}${listed(weekRuns(weeks, 'to'))}`;

/** `90 seconds`, `2 minutes 40 seconds`. */
function lasting(seconds: number): string {
  if (seconds < 120) return counted(seconds, 'second', 'seconds');
  const minutes = counted(Math.floor(seconds / 60), 'minute', 'minutes');
  const over = seconds % 60;
  return over === 0 ? minutes : `${minutes} ${counted(over, 'second', 'seconds')}`;
}

function rest(seconds: number): string {
  return seconds === 0 ? 'No rest: straight on.' : `Rest ${lasting(seconds)}.`;
}

function turnAbout(
  rounds: readonly { readonly weeks: string; readonly rounds: number }[],
  names: readonly string[],
): string {
  const order = names.map(inSentence).map((name, i) => (i === 0 ? name : `then ${name}`));
  const how = rounds.map(({ weeks, rounds: many }) => {
    const said = counted(many, 'round', 'rounds');
    return weeks === '' ? said : `${said} in ${weeks}`;
  });
  const turns = names.length === 1 ? 'Round and round' : `Turn about: ${order.join(', ')}`;
  return `${turns}. ${how.join(', ')}.`;
}

export const englishSets: SetWords = {
  effort: (least, most) => (least === most ? `Leave ${least} in reserve.` : `Leave ${least} to ${most} in reserve.`),
  effortAtLeast: (least) => `Leave at least ${least} in reserve.`,
  talk: {
    sentences: 'You can still talk in whole sentences.',
    phrases: 'You can still say a few words at a time.',
  },
  repsInTime: (reps) => `About ${counted(reps, 'rep fits', 'reps fit')} in the time. No need for more.`,
  deadStop: 'Start each rep from a full stop.',
  onlyLike: (way) => `Only like this: ${way}.`,
  namedWay: (name, way) => `${name}: ${way.slice(0, 1).toLowerCase()}${way.slice(1)}`,
  straightOn: 'Straight from one load to the next, without a rest.',
  steps: 'One set is all the steps, with a breath between them.',
  sideAlone: (side, count, of, dose) => `${side}: ${count} of ${of}${NO_BREAK}sets with ${dose}.`,
  helped: 'The band helps: it carries some of you.',
  tempo: {
    normal: '',
    'slow lowering': 'slow on the way down',
    'slow with a pause': 'slow on the way down, then a pause',
  },
  rest,
  leftFirst: 'Left first, then right.',
  rightFirst: 'Right first, then left.',
  inTurn: 'Left and right in turn.',
  turnAbout,
  signal: (seconds) =>
    seconds === 60
      ? 'Start a set every minute. What is left of the minute is rest.'
      : `Start a set every ${counted(seconds, 'second', 'seconds')}. What is left of them is rest.`,
  workAndPause: (work, pause, changes) =>
    `${lasting(work)} of work, ${lasting(pause)} ${changes ? 'to change over' : 'of rest'}.`,
  tryLoad: (load, amount) => `First set: try the ${load} for ${amount}.`,
  tryVersion: (name, dose) => `First set: try the ${inSentence(name)}, ${dose}.`,
  gateNeeds: (dose, weeks, left) =>
    `First do every set of ${dose}${weeks === '' ? '' : ` in ${weeks}`}.${left === undefined ? ' All of them good.' : ` Each with ${left} left.`}`,
  gateStill: (week) => `Only if you went up in week${NO_BREAK}${week}.`,
  otherwise: (dose) => `Otherwise: ${dose}.`,
  versionDose: (name, dose) => `${name}, ${dose}`,
  feelerIntro: (set, each) =>
    `Feeler set: ${set}. Then ask: how many more good ones?${each ? ' The side with fewer counts.' : ''}`,
  feelerNote: (week) => `How many more, week${NO_BREAK}${week}:`,
  felt: (least, most) => {
    const from = least === 0 ? 'none' : `${least}`;
    if (most >= 99) return `${least} or more left`;
    if (least === most) return `${from} left`;
    return most === least + 1 ? `${from} or ${most} left` : `${from} to ${most} left`;
  },
  feelerAgain: (week) => `As you found in week${NO_BREAK}${week}: how many more good ones were left?`,
  testStop: (left, most) => `Test: stop with ${left} good ones left${most === undefined ? '' : `, or at ${most}`}.`,
  testAll: 'Test: stop when they stop being good.',
  testInTime: (seconds) =>
    `Test: as many full ones as fit in ${counted(seconds, 'second', 'seconds')}. Stop at once at any of its stop signs.`,
  testHeld: (seconds) => `Test: hold it well, for ${counted(seconds, 'second', 'seconds')} at most.`,
  testNote: (week, side, held) =>
    `${held ? 'Seconds' : 'Good ones'}, week${NO_BREAK}${week}${side === '' ? '' : `, ${side}`}:`,
  yourLoad: 'your load',
  withYourLoad: (reps) => `${reps} with the load you found`,
  withLightest: (reps) => `${reps} with the lightest you have`,
  optional: 'Only if you feel fresh.',
  weekList,
  inSentence,
  inSentenceWhole,
};

/** What else than a sore part makes an easier way the right one. */
const TROUBLES: Readonly<Record<Exclude<Cause, BodyPart>, string>> = {
  load: 'it is too much',
  range: 'it goes too far',
  balance: 'you wobble',
  speed: 'it is too quick',
  floor: 'getting to the floor is hard',
  kit: 'the kit is not there',
  grip: 'your grip gives out first',
};

const isPart = (cause: Cause): cause is BodyPart => BODY_PARTS.some((part) => part === cause);

/** These are not sore; they are felt another way. */
const FELT: Readonly<Partial<Record<BodyPart, string>>> = {
  'pelvic floor': 'you feel heaviness or a leak',
  belly: 'your belly pushes out',
};

/** `when it is too much, you wobble, or your knee or hip is sore`. */
export function englishCauses(causes: readonly Cause[]): string {
  const parts = causes.filter(isPart);
  const sore = parts.filter((part) => FELT[part] === undefined);
  const told = [
    ...causes.flatMap((cause) => (isPart(cause) ? [] : [TROUBLES[cause]])),
    ...parts.flatMap((part) => FELT[part] ?? []),
    ...(sore.length === 0 ? [] : [`your ${listed(sore, 'or')} is sore`]),
  ];
  return told.length === 0 ? '' : `when ${listed(told, 'or')}`;
}

const HARDER: Readonly<Partial<Record<Cause, string>>> = {
  load: 'more load',
  range: 'more depth or reach',
  balance: 'more balance',
  speed: 'more speed',
};

export function englishHarderCauses(causes: readonly Cause[]): string {
  const told = causes.flatMap((cause) => HARDER[cause] ?? []);
  return told.length === 0 ? '' : `for ${listed(told)}`;
}
