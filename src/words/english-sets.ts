/** English for the short lines beside an exercise, and for what makes another way the right one. */
import { BODY_PARTS, type BodyPart, type Cause } from '../model/exercise.js';
import type { SetWords } from './catalogue.js';
import { counted } from './english-figures.js';
import { englishManner } from './english-manner.js';
import { inSentence, inSentenceWhole } from './in-sentence.js';
import { listed } from './listed.js';
import { NO_BREAK } from './spacing.js';
import { weekRuns } from './week-runs.js';

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
  ...englishManner,
  repsInTime: (reps) => `About ${counted(reps, 'rep fits', 'reps fit')} in the time. No need for more.`,
  deadStop: 'Start each rep from a full stop.',
  onlyLike: (way) => `Only like this: ${way}.`,
  namedWay: (name, way) => `${name}: ${way.slice(0, 1).toLowerCase()}${way.slice(1)}`,
  straightOn: 'Straight from one load to the next, without a rest.',
  steps: 'One set is all the steps, with a breath between them.',
  sideAlone: (side, count, of, dose) => `${side}: ${count} of ${of}${NO_BREAK}sets with ${dose}.`,
  helped: 'The band helps: it carries some of you.',
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
