/**
 * What a rule decides, for one who reads the rulebook and has no plan before them. Only for rules whose sentence beside
 * a number does not stand alone, or says a figure that a coach may set; `value` is the one in force.
 */
import { type Figure, type Saying, spoken } from '../rule-words.js';

const said = (f: Figure): string => f('value');

const WRITTEN: Readonly<Record<string, Saying>> = {
  'caution-in-block': 'A caution that begins or ends inside the block counts for all of it.',
  'circuit-reserve': (f) =>
    `In a circuit the reserve asked for goes up by ${said(f)}: the next row comes before the breath is back.`,
  'clearance-holds': (f) => `A clearance must reach to the end of the block, and be no older than ${said(f)} by then.`,
  'cool-down-older': (f) => `An older client, or one who is not to hold the breath, cools down for ${said(f)}.`,
  'easy-week-sets': (f) => `An easy week has at least ${said(f)} fewer than the last work week.`,
  'feeler-rise': (f) => `From the load a feeler set was done with, its table leads at most ${said(f)} higher.`,
  'first-weeks': (f) => `The first ${said(f)} of a first block are kept gentle.`,
  'gain-cautioned': (f) => `In a row that meets a caution a gain of ${said(f)} in a work week is counted on.`,
  'minutes-cap': 'A session is no longer than the minutes the client has. A minute begun counts whole.',
  'new-movement-lighter': (f) =>
    `A movement new to the client starts ${said(f)} lighter than its relative would allow.`,
  'one-side-tested': 'One-sided work tested on one side alone rests on that side, as weak evidence.',
  'refuge-once': (f) =>
    `Where one version takes the place of several exercises of a session, it is done in ${said(f)}; the coach is told of the others.`,
  'rpe-to-reserve': (f) => `Reps in reserve are ${said(f)} less the rating of perceived exertion.`,
  'side-gap-told': (f) => `From a gap of ${said(f)} between the sides, the coach is told.`,
  'side-gap-why': (f) => `Above a gap of ${said(f)} between the sides, the coach is asked why before loading it.`,
  'start-moved': 'Weeks begin on the first training day on or after the start. Where that is later, the coach is told.',
  'begin-lighter':
    'Where the lightest load leaves too few good reps, the row begins with the nearest easier version that leaves enough.',
  'begin-tested':
    'A row on the body alone that was never tested begins with the nearest easier version that was tested.',
  'dose-of-version': (f) =>
    `A version of another way of working than the row’s dose is for is done in plain sets, ${said(f)} at most.`,
  'floor-signal': (f) =>
    `At a signal no more is done than ${said(f)} of what could be done to failure: load or reps fall until that is so.`,
  'signal-work': (f) =>
    `The reps of a signal take ${said(f)} of the time to the next at most. A row that asks more is kept back; another version does fewer.`,
  'effort-of-version': 'An effort that says nothing of the version in its place gives way to the curve’s.',
  'version-chosen': 'An exercise that is not allowed gives way to the easier version that answers the cause.',
  'warm-up-load': (f) => `A lighter set comes before the first heavy one, at up to ${said(f)} of its load.`,
  'weaker-side': 'Both sides do what the weaker one can, and the weaker one goes first.',
  'weak-reserve': (f) => `A reserve said to be above ${said(f)} is a rough guess, so the test is weak evidence.`,

  'audit-direct-set': (f) => `For the muscles it is mainly for, a set counts ${said(f)} of a set.`,
  'audit-indirect-set': (f) => `For the muscles that assist, a set counts ${said(f)} of a set.`,
  'audit-group-days': (f) => `A muscle group trained on fewer than ${said(f)} of a week is told.`,
  'audit-push-pull': (f) => `Pushes and pulls of a work week are told when one is more than ${said(f)} of the other.`,
  'audit-side-side': (f) => `One side ahead of the other by more than ${said(f)} in a week is told.`,
  'audit-squat-hinge': (f) =>
    `Squats with lunges, and hinges, of a work week are told when one is more than ${said(f)} of the other.`,
  'audit-unknown-muscle': 'A muscle that stands in none of the seven major groups is counted nowhere, and told.',
  'audit-weekly-sets': (f) => `A muscle group with fewer than ${said(f)} in a work week is told.`,

  'caution-met': 'What asks what a caution is about gives way, or is done with care, as the caution says.',
  'caution-review': 'A caution whose day to look again has come holds on until the coach says otherwise.',
  'placenta-from': (f) =>
    `With placenta praevia, nothing is planned that comes within the weeks from ${said(f)} on; ask first.`,
  'twins-from': (f) => `With twins, the weeks from ${said(f)} on are asked about first.`,
  'pregnancy-back': (f) => `After the first ${said(f)} of a pregnancy, lying on the back is minded.`,
  'pregnancy-belly': (f) => `After the first ${said(f)} of a pregnancy, the belly and the pelvic floor are minded.`,
  'pressure-holds': (f) => `A reading of blood pressure older than ${said(f)} is taken again.`,
  'break-ill': (f) =>
    `Ill for ${said(f)} or more: the first weeks back are gentle. After a fever, or anything in the chest, a doctor says when.`,
  'break-away': (f) => `Away for ${said(f)} or more: the first weeks back are gentle.`,
  'break-hurt': (f) =>
    `Hurt, and away for ${said(f)} or more: the first weeks back are gentle. What a physiotherapist says goes first.`,
  'strength-kept': (f) =>
    `A test from before a break longer than ${said(f)} is taken as weak, and the work starts one load lighter where there is one.`,
  'strength-kept-older': (f) =>
    `From 65 strength goes sooner: a test from before a break longer than ${said(f)} is taken as weak.`,
  'strength-unknown': (f) =>
    `A test from before a break longer than ${said(f)} says nothing now, so a feeler set finds the load.`,
  'return-cut-first': (f) => `The first week back after a break has ${said(f)} fewer sets.`,
  'return-cut-second': (f) => `The second week back after a break has ${said(f)} fewer sets.`,
  'return-cut-third': (f) => `The third week back after a break has ${said(f)} fewer sets.`,
  'return-cut-fourth': (f) => `The fourth week back after a break has ${said(f)} fewer sets.`,
  'return-days-first': (f) => `In the first week back ${said(f)} are enough; more of them are told.`,
  'return-days-second': (f) => `In the second week back ${said(f)} are enough; more of them are told.`,
  'test-waits':
    'No test in gentle weeks, in a pregnancy, in the weeks after a birth or with a vertebral fracture, nor at the start of a moderate plan or a first block.',
  'not-asked': 'Of what was not asked about a client’s health the coach is told, and what is planned until then.',
  'test-not-counted': 'A row without reps to count up to a limit is not tested, and the coach is told.',
  'way-unlocks': 'Where an exercise is refused and one of its own easier ways would do, the coach is told.',
  'would-unlock': 'For each version refused, the coach is told what would open it.',
  'done-median': (f) =>
    `What can be lifted rests on sets marked at home: of those of the last ${said(f)}, the one in the middle.`,
  'done-earned': (f) =>
    `Marks at the top of the range, with the reserve asked for, count towards the next step: ${said(f)} running at most.`,
  'propose-caution': (f) =>
    `Pain marked at one place on ${said(f).replace('reports', 'days')}, or strong once, asks for a caution.`,
  'plates-a-side': (f) => `A dumbbell handle is taken to hold ${said(f)} on a side.`,
  'ladder-earned': 'The next step waits until this one has been done so many sessions running.',
  'ladder-easy-down': 'Where an easy week cannot have fewer sets, its dose is so much lower.',
  'rung-minutes': (f) => `Work by the signal climbs by ${said(f)} at a time.`,
  'stages-ahead': 'So many loads or versions ahead are listed; one at most is opened.',
  'sessions-lost': 'Where a break leaves no room for every session, none is crammed in, and the coach is told.',

  'kit-too-light': 'Earned twice with nothing heavier in the house: the coach is told which one bell would help most.',
  'nothing-climbs': 'A row in which nothing rises from the first work week to the last is told.',
  'range-too-high':
    'A range whose bottom cannot be done with the reserve asked for, and nothing lighter nearer, is told.',
  'to-earn-a-try':
    'Where a heavier load is there and the range is too low to earn it, the coach is told how far it must reach.',
  'walk-asked': 'Of the reps in the range, the most that leave the reserve asked for, or near enough.',
  'walk-back-up': 'After a fall below the load a row began with, the next load up is won back without earning it.',
  'walk-below-tested': 'Only a load lost on the way is won back without earning it.',
  'walk-big-step': 'A big step of load is taken only if it is earned, with what to do otherwise printed beside it.',
  'walk-bottom-and-asked':
    'A load is won back when the bottom of the range leaves the reserve asked for there, or near enough.',
  'walk-bottom-and-floor': 'A rise is open when the bottom of the range leaves the least reserve allowed there.',
  'walk-derived': 'A load or version from which nothing can be predicted is not gone to.',
  'walk-earned-once': 'A small step takes one session at the top of the range with the reserve asked for.',
  'walk-easier-version':
    'Where no load of a version leaves the least reserve allowed: the nearest easier version that does.',
  'walk-easy-asked': 'In an easy week, the most reps that leave the reserve it asks for.',
  'walk-easy-least': 'An easy week that cannot leave the reserve it asks for has the fewest reps it may.',
  'walk-easy-one-fewer': 'An easy week from which no set can be taken away has a rep fewer.',
  'walk-fewer-reps': (f) =>
    `Where nothing in the range leaves the least reserve allowed: the load held, with up to ${said(f)} fewer than the range.`,
  'walk-fewest':
    'Where the range can keep neither to the reserve asked for nor to the limit on volume: its fewest reps.',
  'walk-floor': 'The least reserve allowed is never gone below: one rep more would be one too many.',
  'walk-gate-once': 'One gate a row and edition; the next waits for what was done.',
  'walk-harder-version': 'With nothing else open, the next harder version, taken only if it is earned.',
  'walk-heavier-first': 'Of two doses as near to the reserve asked for, the heavier.',
  'walk-held': 'While pain, a break or a caution holds a client, nothing is made harder.',
  'walk-normal-tempo':
    'Where nothing in the range leaves the least reserve allowed at a slower tempo: the load held at normal tempo, before a lower one.',
  'walk-lower-load': 'Where nothing in the range leaves the least reserve allowed: a lower load, in the range.',
  'walk-more-reps-first': 'Of two doses as heavy and as near, the one of more reps.',
  'walk-range': 'Reps stay in the row’s range, and never go above its top.',
  'walk-slower': 'With no step of load open, the next slower tempo.',
  'walk-slower-leaves-floor': 'A slower tempo is open when some reps of the range leave the least reserve allowed.',
  'walk-small-step': 'A small step of load that is earned is taken.',
  'walk-tolerance': (f) => `The reserve asked for may be missed by ${said(f)} of a rep.`,
  'walk-trial': 'A big step not open yet is tried with the first set, each work week, until whole sets are earned.',
  'walk-trial-allowed': 'Trial sets are for clients and rows that allow them.',
  'walk-trial-in-range': 'A next load is tried only while the load held can be done in its range.',
  'walk-trial-margin': (f) =>
    `A trial set is offered when the next load leaves ${said(f)} reps more than the least reserve allowed.`,
  'walk-version-trial': 'A harder version not open yet is tried with the first set.',
  'walk-volume': 'Reps times load of one set are not far above the greatest so far.',
  'walk-volume-share': (f) => `One set may come to ${said(f)} of the greatest so far.`,
  'walk-weak-no-rise': 'On weak evidence a big step is tried, never taken.',
  'walk-weak-twice': 'On weak evidence even a small step takes two sessions at the top of the range.',
};

export const PLAIN: Readonly<Record<string, (figure: Figure) => string>> = Object.fromEntries(
  Object.entries(WRITTEN).map(([rule, saying]) => [rule, spoken(saying)]),
);
