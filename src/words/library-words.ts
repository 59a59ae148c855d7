/** What the public library says of its own: headings and the few sentences that no exercise carries. */
import type { Ask, Facts, Pattern } from '../model/exercise.js';
import type { LoadNeed } from '../model/kit.js';
import { englishAsked, englishOut } from './english-asks.js';

export interface LibraryWords {
  readonly title: (studio: string) => string;
  readonly doesNotKnowYou: string;
  readonly notMedical: string;
  readonly patterns: Readonly<Record<Pattern, string>>;
  readonly movement: string;
  readonly byMovement: string;
  readonly byKit: string;
  readonly byAsk: string;
  readonly byVersion: string;
  readonly programmes: string;
  readonly nothingNeeded: string;
  /** Any one of these. */
  readonly either: (things: readonly string[]) => string;
  readonly load: (need: LoadNeed) => string;
  readonly ask: (of: Ask['of']) => string;
  /** `Some of the hips and knees at the bottom; some grip.` */
  readonly asked: (asks: readonly Ask[]) => string;
  readonly sides: Readonly<Record<Facts['sides'], string>>;
  readonly sidesHead: string;
  readonly needs: string;
  readonly asks: string;
  readonly asksNothing: string;
  readonly signOff: string;
  /** After the name of an exercise that another leads to: `, once your coach has seen you do it`. */
  readonly seenFirst: string;
  readonly easier: string;
  readonly here: string;
  readonly harder: string;
  readonly none: string;
  readonly setUp: string;
  readonly pickUp: string;
  readonly putDown: string;
  readonly cues: string;
  readonly breath: string;
  readonly faults: string;
  readonly youSee: string;
  readonly say: string;
  readonly stopIf: string;
  readonly partner: string;
  readonly forWhom: (who: string) => string;
  readonly weeks: (weeks: number) => string;
  readonly exercise: string;
  readonly setsAndReps: string;
  readonly turnAbout: (rounds: number) => string;
  readonly anyOf: (pattern: string) => string;
  readonly outline: string;
  readonly back: string;
  /** The lists that lead to every exercise, one beside the other. */
  readonly lists: string;
  /** The filtering sentence: its heading and its parts. */
  readonly sentence: {
    readonly title: string;
    readonly have: string;
    readonly noKit: string;
    readonly loads: Readonly<Record<LoadWord, string>>;
    /** `chair` → `a chair` */
    readonly thing: (name: string) => string;
    readonly leaveOut: string;
    readonly out: (of: Ask['of']) => string;
    readonly more: string;
    readonly leaveOutToo: string;
    readonly parts: string;
    readonly again: string;
  };
  readonly theRules: string;
  readonly rulebookHead: string;
  readonly card: string;
  readonly notHere: string;
  readonly notHereWhy: string;
  readonly changedExercises: string;
  /** For search engines and previews. */
  readonly summary: (studio: string, place: string, exercises: number) => string;
  /** Leads to the rules by which loads and reps are planned. */
  readonly rulebook: string;
}

/** What somebody may say they have; `alike` and `unlike` are two of a kind. */
type LoadWord =
  | 'bell'
  | 'bell-alike'
  | 'bell-unlike'
  | 'dumbbell'
  | 'dumbbell-alike'
  | 'dumbbell-unlike'
  | 'bar'
  | 'band';

const capital = (text: string): string => `${text.slice(0, 1).toUpperCase()}${text.slice(1)}`;

const englishLoad = (need: LoadNeed): string => {
  if (need.kind === 'bar' || need.kind === 'band') return need.kind === 'bar' ? 'a bar with plates' : 'a band';
  if (need.count === 1) return need.kind === 'bell' ? 'one bell' : 'one dumbbell';
  const things = need.kind === 'bell' ? 'bells' : 'dumbbells';
  return need.unequal ? `two ${things}, equal or not` : `two equal ${things}`;
};

const englishLibrary: LibraryWords = {
  title: (studio) => `${studio}: the exercises`,
  doesNotKnowYou: 'This does not know you. Ask first.',
  notMedical:
    'Nothing here is medical advice. Ask your coach, and your doctor, midwife or physiotherapist, before you start or change anything.',
  patterns: {
    squat: 'Squat',
    hinge: 'Hinge',
    lunge: 'Lunge',
    push: 'Push',
    pull: 'Pull',
    carry: 'Carry',
    rotate: 'Rotate',
    brace: 'Brace',
    travel: 'Travel',
    mobility: 'Mobility',
  },
  movement: 'Movement',
  byMovement: 'By movement',
  byKit: 'By kit',
  byAsk: 'By what it asks',
  byVersion: 'Easier and harder',
  programmes: 'Programmes',
  nothingNeeded: 'nothing',
  either: (things) => things.join(' or '),
  load: englishLoad,
  ask: (of) => capital(of),
  asked: englishAsked,
  sides: { both: 'Both sides together', each: 'One side, then the other', alternate: 'Turn about within the set' },
  sidesHead: 'Sides',
  needs: 'You need',
  asks: 'It asks',
  asksNothing: 'Nothing in particular.',
  signOff: 'Your coach must have seen you do this before you take it home.',
  seenFirst: ', once your coach has seen you do it',
  easier: 'Easier',
  here: 'This one',
  harder: 'Harder',
  none: 'none here',
  setUp: 'Set-up',
  pickUp: 'Pick up',
  putDown: 'Put down',
  cues: 'Cues',
  breath: 'Breath',
  faults: 'Faults',
  youSee: 'You see',
  say: 'Say',
  stopIf: 'Stop if',
  partner: 'Partner',
  forWhom: (who) => `For ${who}.`,
  weeks: (weeks) => (weeks === 1 ? 'One week.' : `${weeks} weeks.`),
  exercise: 'Exercise',
  setsAndReps: 'Sets and reps',
  turnAbout: (rounds) => `Turn about, ${rounds} ${rounds === 1 ? 'round' : 'rounds'}`,
  anyOf: (pattern) => `A ${pattern}, as your coach chooses`,
  outline: 'An outline only: versions, loads and reps are fitted to each person.',
  back: 'All exercises',
  lists: 'Lists',
  sentence: {
    title: 'Only what fits',
    have: 'I have',
    noKit: 'no kit',
    loads: {
      bell: 'one bell',
      'bell-alike': 'a pair of bells',
      'bell-unlike': 'two unequal bells',
      dumbbell: 'one dumbbell',
      'dumbbell-alike': 'a pair of dumbbells',
      'dumbbell-unlike': 'two unequal dumbbells',
      bar: 'a bar with plates',
      band: 'a band',
    },
    thing: (name) => `${/^[aeiou]/.test(name) ? 'an' : 'a'} ${name}`,
    leaveOut: 'leave out',
    out: englishOut,
    more: 'Leave out more',
    leaveOutToo: 'Leave out too',
    parts: 'and whatever asks anything of the',
    again: 'Begin the sentence again',
  },
  theRules: 'In the rulebook',
  rulebookHead: 'Rulebook',
  card: 'Printed, this page is one A5 card.',
  notHere: 'This page is not here',
  notHereWhy: 'It may have been renamed or taken out. Every exercise there is stands in the lists of the first page.',
  changedExercises: 'Exercises, as they are new or changed',
  summary: (studio, place, exercises) =>
    `${exercises} exercises of ${studio}, ${place}: how each is done, what to mind, when to stop, what is easier and what is harder.`,
  rulebook: 'The rulebook: how loads, sets and reps are decided',
};

/** English until another language has them. */
export const sayLibraryWords = (_language: string): LibraryWords => englishLibrary;
