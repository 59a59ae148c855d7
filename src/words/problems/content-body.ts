/** Sentences for what is wrong with the grammars, the body of a file, and what files say of each other. */
import type { Advice } from '../../model/advice.js';
import type { ContentProblems } from '../../model/problems-content.js';
import type { fileSayings } from './content-file.js';
import type { pictureSayings } from './pictures.js';
import type { poseSayings } from './poses.js';
import { counted, didYouMean, listed, quoted, type Sayings } from './said.js';

const CONTENTS = {
  list: ['a list', 'each line of it beginning with a hyphen: - …'],
  table: ['a table', 'a table, its lines beginning with |'],
  text: ['plain text', 'paragraphs or a list'],
} as const;

const UNPRINTED = {
  picture: [
    'A picture is printed nowhere but under Poses of an exercise, alone between empty lines.',
    'what it shows, in words',
  ],
  quotation: ['A line beginning with > is not used here.', 'the same words without >'],
  code: [
    'Text set in by four spaces or between rows of backticks is not used here.',
    'the same words at the start of the line',
  ],
  line: ['A line across the page is not used here.', 'a heading, or nothing'],
  tag: ['HTML is not read: this would be printed as it stands.', 'plain words; **two stars** make words strong'],
} as const;

/** A key and its day, as they stand on the page: `until 2026-12-01`. */
const dated = (text: string): string =>
  text.replace(/^(.*) (\S+)$/, (_, key: string, day: string) => `${quoted(key)} (${day})`);

const SESSION = 'a letter, a colon and a name: ## A: Squat and press';

/** More than this of a circle nobody reads. */
const MOST_ROUND = 9;

/** Ids from the first round to it again; of many the beginning and the end. */
const roundOf = (ids: readonly string[]): string =>
  ids.length <= MOST_ROUND
    ? ids.join(' → ')
    : `${ids.slice(0, 4).join(' → ')} → ${ids.length - 6} more → ${ids.slice(-2).join(' → ')}`;

type CodesOfPosesAndOfPictures = keyof typeof poseSayings | keyof typeof pictureSayings;

export const bodySayings: Sayings<
  Omit<ContentProblems, keyof typeof fileSayings | CodesOfPosesAndOfPictures | Advice>
> = {
  'share-unreadable': ({ text }) => ({
    message: `${quoted(text)} is not a share with its source.`,
    hint: '0.64 (published; author, year, journal, page)',
  }),
  'source-missing': ({ standing }) => ({
    message:
      standing === ''
        ? 'A figure such as this needs to say where it comes from.'
        : `What is ${standing} has a source, and none is given.`,
    hint: '(published; author, year, page), (derived; from what), (adapted; from what) or (practice)',
  }),
  'kit-unreadable': ({ text, key }) => ({
    message: `${quoted(text)} is not an item of kit.`,
    hint:
      key === 'bands'
        ? 'names, the easiest first: light, medium ×2, strong'
        : 'masses, with ×2 for two alike: 8, 12 ×2, 16',
  }),
  'load-unreadable': ({ text }) => ({
    message: `${quoted(text)} is not a way to load an exercise.`,
    hint: 'bell, dumbbell, two bells, two dumbbells, bar, band or none; several with or; (may differ) after an unequal pair',
  }),
  'dose-unreadable': ({ text }) => ({
    message: `${quoted(text)} is not read as sets and reps.`,
    hint: '3 × 8–12, 4 × 6 each side, 3 × 30 s, 3 × 20 m, 10 min: 8 every minute, 15 main + 5 next up, 1-2-3 × 4 or 3 rounds',
  }),
  'dose-without-sets': ({ text }) => ({
    message: `${quoted(text)} does not say how many sets.`,
    hint: `3 × ${text}`,
  }),
  'dose-in-circuit': ({ text, rounds }) => ({
    message: `In a circuit the rounds are the sets (${rounds} here), so ${quoted(text)} cannot be meant.`,
    hint: 'the reps alone, such as 8–12, 6 each side or 30 s',
  }),
  'effort-unreadable': ({ text }) => ({
    message: `${quoted(text)} is not an effort.`,
    hint: 'reserve 3, RPE 7 or 70 %; where breath is the measure, in sentences or in phrases',
  }),
  'pattern-unreadable': ({ text }) => ({
    message: `${quoted(text)} names neither an exercise nor a pattern.`,
    hint: 'a link, or: any squat, any push (horizontal)',
  }),
  'ask-unreadable': ({ text }) => ({
    message: `${quoted(text)} does not say how much is asked.`,
    hint: 'some or much, then the side and the phases where they matter: some, working, bottom',
  }),
  'pressure-unreadable': ({ text }) => ({
    message: `${quoted(text)} is not a blood pressure.`,
    hint: 'the higher figure first, at rest: 128/82',
  }),
  'main-bell-unreadable': ({ text }) => ({
    message: `${quoted(text)} does not say which bell goes with which movement.`,
    hint: 'a movement pattern and a mass: squat 16 kg, hinge 20 kg',
  }),
  'parts-of-combination': ({ wanted }) =>
    wanted
      ? {
          message: 'A combination has parts, and at least two must be named.',
          hint: 'parts: the file names of two exercises or more, in the order done',
        }
      : {
          message: 'Only a combination has parts.',
          hint: 'way: combination; or no parts',
        },
  'part-unfit': ({ part, why }) => ({
    message:
      why === 'itself'
        ? `The combination names itself (${quoted(part)}) among its parts.`
        : `${quoted(part)} is a combination itself, and cannot be a part of another.`,
    hint: 'the file names of single exercises',
  }),
  'expect-unreadable': ({ text }) => ({
    message: `${quoted(text)} is not read as an expectation.`,
    hint: 'client, week 4, session, row: what is printed',
  }),
  'unknown-heading': ({ heading, nearest }) => ({
    message: `There is no section ${quoted(heading)} in such a file.`,
    hint:
      didYouMean(nearest && `## ${nearest}`) || 'the headings of the content guide, each on a line beginning with ##',
  }),
  'heading-twice': ({ heading }) => ({
    message: `The heading ${quoted(heading)} comes twice.`,
    hint: 'both lists under one heading',
  }),
  'missing-section': ({ section }) => ({
    message: `The section ${quoted(section)} is missing, or nothing stands in it.`,
    hint: section === 'Pick up and put down' ? '- Pick up: … and - Put down: …' : `## ${section}, and a list under it`,
  }),
  'wrong-content': ({ section, wanted }) => ({
    message: `${quoted(section)} holds ${CONTENTS[wanted][0]}, and this is something else.`,
    hint: CONTENTS[wanted][1],
  }),
  'not-printed': ({ what }) => {
    const [message, hint] = UNPRINTED[what];
    return { message, hint };
  },
  'unknown-column': ({ column, nearest, known }) => ({
    message: `There is no column ${quoted(column)} in this table.`,
    hint: didYouMean(nearest) || `one of: ${listed(known)}`,
  }),
  'missing-column': ({ column }) => ({
    message: `The table has no column ${quoted(column)}.`,
    hint: `a column headed ${column}`,
  }),
  'column-twice': ({ column }) => ({
    message: `The column ${quoted(column)} comes twice.`,
    hint: 'one of the two',
  }),
  'too-many-cells': ({ cells, columns }) => ({
    message: `This line has ${counted(cells, 'cell')} and the table ${counted(columns, 'column')}.`,
    hint: 'no | within a cell, or \\| where it is meant',
  }),
  'empty-cell': ({ column }) => ({
    message: `Nothing is written under ${quoted(column)}.`,
    hint: column === 'Rest' ? '60 s, 2 min or none' : `what belongs under ${column}`,
  }),
  'pick-up-or-put-down': ({ text }) => ({
    message: `${quoted(text)} does not say whether it is for picking up or for putting down.`,
    hint: 'Pick up: … or Put down: …',
  }),
  'unknown-cause': ({ text, nearest }) => ({
    message: `${quoted(text)} is nothing a version can be for.`,
    hint: didYouMean(nearest) || 'load, range, balance, speed, floor, kit, grip or a part of the body',
  }),
  'ratio-unreadable': ({ text }) => ({
    message: `${quoted(text)} is not a ratio.`,
    hint: 'ratio 0.9 (practice), or ratio 0.9 (published; author, year, page)',
  }),
  'too-few-cues': ({ cues, least }) => ({
    message: `There ${cues === 1 ? 'is 1 cue' : `are ${cues} cues`}; a client sees ${least} during a set.`,
    hint: `at least ${least} cues, the most useful first`,
  }),
  'session-unnamed': ({ heading }) => ({
    message: `${quoted(heading)} does not name a session.`,
    hint: SESSION,
  }),
  'circuit-unreadable': ({ heading }) => ({
    message: `${quoted(heading)} does not say how many rounds there are, from 1 to 20.`,
    hint: '### Circuit, 3 rounds',
  }),
  'nothing-in-it': ({ what }) => ({
    message: what === 'block' ? 'No row stands under this heading.' : `This ${what} has nothing in it.`,
    hint: what === 'programme' ? SESSION : 'a table with the columns Exercise, Sets and reps, and Rest',
  }),
  'id-twice': ({ id, what }) => ({
    message:
      what === 'session' ? `Two sessions are called ${quoted(id)}.` : `Two rows of this session go by ${quoted(id)}.`,
    hint: what === 'session' ? 'a letter for each' : 'a column Id, with a name of its own for each row',
  }),
  'weeks-differ': ({ key, weeks, reserve }) => ({
    message: `${quoted(key)} has ${counted(weeks, 'week')}, and reserve ${reserve}.`,
    hint: `${reserve} figures, one a week`,
  }),
  'curve-length': ({ weeks, least, most }) => ({
    message: `A block has ${least} to ${most} weeks, and there ${weeks === 1 ? 'is 1 figure' : `are ${weeks} figures`}.`,
    hint: 'a figure for each week: 3, 3, 2, 2, 2, 4 for six weeks, 3, 3 for two',
  }),
  'week-after-block': ({ week, weeks }) => ({
    message: `There is no week ${week}: the block has ${counted(weeks, 'week')}.`,
    hint: `a week from 1 to ${weeks}, or another figure under reserve for each week more`,
  }),
  'dates-out-of-order': ({ first, second }) => ({
    message: `${dated(second)} is before ${dated(first)}: it can only come after it.`,
    hint: 'a later date, or the other one put right',
  }),
  'reserve-below-floor': ({ reserve, floor }) => ({
    message: `A reserve of ${reserve} is below the floor of ${floor} for anybody training alone; at least ${floor} will be used.`,
    hint: `${floor} or more`,
  }),
  'holds-not-said': ({ load }) => ({
    message: `It has a load (${load}), and nothing says how the load is counted.`,
    hint: 'holds: total, or holds: per hand',
  }),
  'holds-does-not-fit': ({ holds, load }) => ({
    message: `${quoted(holds)} cannot be how ${load} is counted.`,
    hint: load === 'band' ? 'holds: band, or holds: assisted' : 'holds: total, holds: per hand or holds: added',
  }),
  'way-needs-load': () => ({
    message: 'Strength is counted by its load, and this exercise has none.',
    hint: 'way: bodyweight, or a load',
  }),
  'sign-off-needed': ({ because }) => ({
    message: `It goes home only once you have passed it, because it is ${because}.`,
    hint: 'sign-off: yes',
  }),
  'cut-and-kept': ({ row }) => ({
    message: `${quoted(row)} is both never cut and cut first.`,
    hint: 'one of the two',
  }),
  'rule-without-reason': ({ rule }) => ({
    message: `Your own value for ${quoted(rule)} has no reason beside it.`,
    hint: 'why you set it, in a few words, under Reason',
  }),
  'not-a-link': ({ text, to }) => ({
    message: `${quoted(text)} is not a link to ${to === 'exercise' ? 'an exercise' : `a ${to}`}.`,
    hint: '[Goblet squat](../exercises/goblet-squat.md)',
  }),
  'link-elsewhere': ({ target, to }) => ({
    message:
      to === 'exercise'
        ? `${quoted(target)} does not lead to a file in exercises.`
        : `${quoted(target)} leads out of the content folder.`,
    hint:
      to === 'exercise'
        ? 'the path of an exercise’s file, from this file'
        : 'a web address, or a path within the folder',
  }),
  'link-to-client': ({ target }) => ({
    message: `${quoted(target)} leads to a client, and this page may stand in public.`,
    hint: 'the words without the link',
  }),
  'broken-link': ({ target, nearest }) => ({
    message: `There is no file where ${quoted(target)} leads.`,
    hint: didYouMean(nearest) || 'the path of a file that is there, from this file',
  }),
  'unknown-exercise': ({ id, nearest }) => ({
    message: `There is no exercise ${quoted(id)}.`,
    hint: didYouMean(nearest) || `a file exercises/${id}.md, or a link to one that is there`,
  }),
  'unknown-programme': ({ id, nearest }) => ({
    message: `There is no programme ${quoted(id)}.`,
    hint: didYouMean(nearest) || `a file programmes/${id}.md, or one that is there`,
  }),
  'unknown-client': ({ id, nearest }) => ({
    message: `There is no client ${quoted(id)}.`,
    hint: didYouMean(nearest) || 'the name of a client’s folder',
  }),
  'expect-nobody': ({ id, nearest }) => ({
    message: `This is expected for ${quoted(id)}, and there is no such client here, so nothing was compared.`,
    hint: didYouMean(nearest) || 'delete the line, or name a client who is here',
  }),
  'unknown-session': ({ id, known }) => ({
    message: `There is no session ${quoted(id)} in this programme.`,
    hint: known.length === 0 ? SESSION : `one of: ${listed(known)}`,
  }),
  'unknown-row': ({ id, nearest }) => ({
    message: `There is no row ${quoted(id)}.`,
    hint: didYouMean(nearest) || 'the id of a row: what stands under Id, or else its exercise’s file name',
  }),
  'unknown-rule': ({ id, nearest }) => ({
    message: `There is no rule ${quoted(id)}.`,
    hint: didYouMean(nearest) || 'the id of a rule, as `chalkleaf why` prints it',
  }),
  'unknown-phase': ({ phase, known, nearest }) => ({
    message: `No exercise has a phase ${quoted(phase)}, so this would hold nothing back.`,
    hint: `${nearest === '' ? '' : `${nearest}  (did you mean that?); `}one of: ${listed(known)}`,
  }),
  'partner-self': () => ({
    message: 'A client cannot be their own partner.',
    hint: 'the folder name of the other client, or no partner',
  }),
  'easier-in-a-circle': ({ path }) => ({
    message:
      path.length === 1
        ? `${quoted(path[0] ?? '')} is said to be easier than itself.`
        : `Easier goes round in a circle for ${path[0] ?? ''}: ${roundOf(path.slice(1))}.`,
    hint: 'one of these links taken out, or under the other heading',
  }),
  'test-load': ({ exercise, wanted }) => ({
    message: wanted
      ? `${exercise} is done with a load, and the test does not say which.`
      : `${exercise} is done without a load, and the test has one.`,
    hint: wanted ? '16 kg under Load' : 'nothing under Load',
  }),
  'observation-needs-exercise': ({ seen }) => ({
    message: `${quoted(seen)} is said of no exercise.`,
    hint: '[Goblet squat](../../exercises/goblet-squat.md) under Exercise',
  }),
  'observation-needs-side': ({ seen, apart }) => ({
    message: apart
      ? `${quoted(seen)} names one side, and the column Side the other.`
      : `${quoted(seen)} does not say which side it was.`,
    hint: 'left or right under Side',
  }),
  'observation-pain': ({ text, where }) => ({
    message:
      where === ''
        ? `${quoted(text)} does not say how much it hurt, in a whole number from 0 to 10.`
        : `${quoted(text)} does not say where it hurt in words that exercises know.`,
    hint: where === '' ? 'pain knee 3' : `pain ${where} 3  (did you mean that?)`,
  }),
  'test-side': ({ exercise, wanted }) => ({
    message: wanted
      ? `${exercise} is done on each side, and the test does not say which it was.`
      : `${exercise} is done with both sides together, and the test names one.`,
    hint: wanted ? 'a line for left and a line for right' : 'nothing under Side',
  }),
};
