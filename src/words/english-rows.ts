/** The rules of rows and their effort: what English says of each. The other rooms' stand in `rules/`. */
import type { RowRuleName } from './reason-words.js';
import { begun, clause, type Figure, held, type Saying } from './rule-words.js';

/** What the programme asked for, where a floor stands above it. */
const written = (f: Figure): string => clause(f('programme'), (n) => ` (the programme asks for ${n})`);

const EFFORTS: Readonly<Record<string, string>> = {
  reserve: 'reps left',
  rpe: 'RPE',
  percent: 'part of a maximum',
  talk: 'by the breath',
};

export const englishRows: Readonly<Record<RowRuleName, Saying>> = {
  'begin-lighter': (f) =>
    f('by') === ''
      ? `The lightest load in the house is too heavy for the ${f('programme') || 'exercise'}, so the row is done with an easier version${clause(f('exercise'), (name) => `: ${name}`)}. A lighter one would open it.`
      : `By what was marked, even the easiest ${f('programme') || 'exercise'} leaves too little in reserve, so the row is done with an easier version${clause(f('exercise'), (name) => `: ${name}`)}. A test of yours decides.`,
  'begin-tested': (f) =>
    `${begun(f('exercise') || 'the version tested')} first${clause(f('programme'), (name) => `, since the ${name} was never tested`)}: what was seen goes before a guess.`,
  'circuit-reserve': 'One more rep is left in reserve, since the next set comes before the breath is back.',
  'clock-one-tempo':
    'On the clock, and in rising or falling reps, the tempo stays as it is: a slower one would not fit.',
  'dose-of-version': (f) =>
    `${begun(f('exercise') || 'this version')} is another way of working, so the row is done in plain sets: ${f('sets') || held(f, 'at most 5')}.`,
  'effort-of-version': (f) =>
    `The effort written for the row${clause(f('effort'), (kind) => ` (${EFFORTS[kind] ?? kind})`)} says nothing of the ${f('exercise') || 'version in its place'}: the week's own is asked for instead.`,
  'feeler-rise': (f) =>
    (f('finds') === 'reps'
      ? 'The feeler set finds the reps: nothing is known of this version yet.'
      : 'The feeler set finds the load; its table leads one load above the one felt, at most.') +
    clause(f('part'), (part) => ` The ${part} was tested held otherwise, which says nothing of it here.`),
  'first-weeks': (f) => `The first ${held(f, '2 weeks')} of a first block are kept gentle.`,
  'floor-alone': (f) => `Training alone: never fewer than ${f('floor') || held(f, '2')} in reserve${written(f)}.`,
  'floor-cautioned': (f) =>
    `A caution is met here: never fewer than ${f('floor') || held(f, '3')} in reserve${written(f)}.`,
  'floor-first-weeks': (f) =>
    `First weeks of a first block: never fewer than ${f('floor') || held(f, '4')} in reserve${written(f)}.`,
  'floor-novice': (f) =>
    `Still new to training: never fewer than ${f('floor') || held(f, '3')} in reserve${written(f)}.`,
  'floor-older': (f) => `From 65: never fewer than ${f('floor') || held(f, '3')} in reserve${written(f)}.`,
  'floor-signal': (f) =>
    `At a signal, no more than ${held(f, 'half')} of what could be done: never fewer than ${f('floor') || 'as many again'} in reserve${written(f)}.`,
  'gain-cautioned': (f) =>
    `A caution is met${clause(f('caution'), (what) => ` (${what})`)}${clause(f('met by'), (name) => ` by the ${name}`)}: no gain in strength is counted on here.`,
  'gain-novice': (f) => `A novice is taken to gain ${f('gain') || held(f, '1 %')} in a work week.`,
  'gain-trained': (f) => `A trained client is taken to gain ${f('gain') || held(f, '0.5 %')} in a work week.`,
  'lighter-bell': (f) =>
    `This row asks for the lighter bell${clause(f('load'), (load) => `: ${load}`)}${clause(f('main'), (main) => `, below the main one, ${main}`)}. Nothing heavier is used here.`,
  'main-bell': (f) => `This row begins with the main bell of the movement${clause(f('main'), (main) => `: ${main}`)}.`,
  'new-movement-lighter': (f) =>
    `A movement new to the client starts one load lighter than ${clause(f('relative'), (name) => `what the ${name} shows`) || 'its relative would allow'}.`,
  'next-up-bell': (f) =>
    `This row asks for the next bell up${clause(f('load'), (load) => `: ${load}`)}${clause(f('main'), (main) => `, above the main one, ${main}`)}. On a weak estimate, or where care is asked, it begins with the main one.`,
  'one-side-tested': (f) =>
    `Only one side was tested or marked${clause(f('untested'), (side) => `, not the ${side}`)}: a weak estimate until both are.`,
  'percent-of-maximum': (f) =>
    `No load here is above ${f('percent') || 'the part asked for'} of what could be lifted once; reps and reserve stay as the curve asks.`,
  'plates-a-side': (f) => `A dumbbell handle is taken to hold ${held(f, '5')} plates on a side.`,
  'easier-hold': (f) =>
    `An easier hold in place of what is not held lasts ${held(f, '10 s')}, or the least the programme asks of it.`,
  'easier-reps': (f) =>
    `An easier version in reps, in place of what is not counted so, has ${held(f, '5 reps')}, or the fewest the programme asks of it.`,
  'own-dose': 'Nothing on the side asks more of an exercise than the client’s own work in it.',
  'refuge-once': (f) =>
    `The ${f('programme') || 'exercise'} is left out: the ${f('exercise') || 'version in its place'} stands in this session already${clause(f('stays') === f('exercise') ? '' : f('stays'), (name) => `, for the ${name}`)}.${clause(f('never cut'), () => ' The programme says this row is never cut.')}`,
  'rpe-to-reserve': 'Reps in reserve are ten less the rating of perceived exertion.',
  'side-gap-own-bell': (f) =>
    `The ${f('side') || 'stronger'} side does ${f('sets') || held(f, '2 sets')} with the ${f('load') || 'load'} it was tested with, so that it loses nothing while the other catches up.`,
  'side-gap-told': (f) =>
    `The sides differ${clause(f('gap'), (gap) => ` by ${gap}`)}${clause(f('weaker'), (side) => `; the ${side} is the weaker`)}. Both do what the weaker can.`,
  'side-gap-why': (f) =>
    `The sides differ${clause(f('gap'), (gap) => ` by ${gap}`)}, which is a lot. Ask why before you load it.`,
  'signal-work': (f) =>
    `More ${f('exercise') || 'of it'} would leave less rest than work before the next signal, so it is ${f('reps') || 'fewer'} at each.`,
  'tempo-slow-lowering': (f) => `A slow lowering leaves ${held(f, '80 %')} of the reps.`,
  'tempo-slow-with-a-pause': (f) => `A slow lowering and a pause leave ${held(f, '70 %')} of the reps.`,
  'unequal-at-most': (f) =>
    `Of two unequal bells the heavier is above the lighter by no more than ${held(f, '33.4 %')} of it.`,
  'unequal-hands': 'Two unequal bells: they change hands after every set, so that either side holds the heavier one.',
  'unequal-near': (f) => `An equal pair goes before an unequal one within ${held(f, '10 %')} of its mass.`,
  'warm-up-load': 'One lighter set comes before the first heavy one, at up to three quarters of its load.',
  'weaker-side': (f) =>
    `The ${f('weaker') || 'weaker'} side is the weaker${clause(f('gap'), (gap) => `, by ${gap}`)}: both do what it can, and it goes first.`,
  'weakest-part': (f) =>
    `Never tested as a whole, so it rests on its weakest part${clause(f('part'), (part) => `, the ${part}`)}, and begins one load lighter: a weak estimate.`,
  'weak-reserve': (f) => `A reserve above ${held(f, '5')} is a rough guess, so the test is weak evidence.`,
};
