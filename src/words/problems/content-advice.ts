/** Gentle sentences for a writer: what a coach would want to hear of their own pages. They hold nothing back. */
import type { Advice } from '../../model/advice.js';
import type { ContentProblems } from '../../model/problems-content.js';
import { counted, quoted, type Sayings } from './said.js';

export const adviceSayings: Sayings<Pick<ContentProblems, Advice>> = {
  'fault-unsaid': ({ fault }) => ({
    message: `Nothing is said to mend this fault: ${quoted(fault)}.`,
    hint: 'what you see — "what you say", in the words that work on the floor',
  }),
  'many-cues': ({ cues, most, phase }) =>
    phase === ''
      ? {
          message: `Here are ${cues} cues; three are heard during a set, and more than ${most} are not read before it.`,
          hint: 'the cues that mend most, those to be heard first; the others under Faults, as what to say',
        }
      : {
          message: `Here are ${cues} cues for ${quoted(phase)}, which is over before the last of them is heard.`,
          hint: `at most ${most} for one phase; the others under Faults, as what to say`,
        },
  'long-cue': ({ words, most }) => ({
    message: `This cue has ${words} words; about ${most} can be said in one breath (our own measure).`,
    hint: `one picture in ${most} words or fewer, or two cues`,
  }),
  'stop-sign-everywhere': ({ pages, of }) => ({
    message: `This stop sign stands on ${pages} of ${of} pages, so it tells nobody what to look for in this exercise.`,
    hint: 'what goes wrong in this exercise first; signs that hold for every exercise stand at the front of the booklet',
  }),
  'easier-for-what': ({ version }) => ({
    message: `Nothing says what ${quoted(version)} is easier for, so it is taken to be for load alone.`,
    hint: 'after it: — for load, range, balance, speed, floor, kit, or where it is sore',
  }),
  'easier-needs-kit': () => ({
    message: 'However far the easier versions lead, each needs kit: somebody without it has nothing to do instead.',
    hint: 'under Easier, a link to an exercise with empty hands: — for kit, load',
  }),
  'exercise-unreached': () => ({
    message:
      'No programme asks for this exercise, and no page leads to it from one that is asked for: no client meets it.',
    hint: 'a row for it in a programme, or a link to it under Easier or Harder on another page',
  }),
  'hinges-without-pull': ({ session, hinges }) => ({
    message: `Session ${session} has ${hinges} hinges and no pull.`,
    hint: 'a row that pulls in place of one of them: any pull (horizontal)',
  }),
  'pushes-without-pull': ({ pushes }) => ({
    message: `This programme has ${counted(pushes, 'row')} that push and none that pulls.`,
    hint: 'a pull for each push, or nearly: any pull (horizontal)',
  }),
  'legs-left-out': ({ arms }) => ({
    message: `This programme has ${counted(arms, 'row')} for the arms and none that squats, hinges or lunges.`,
    hint: 'a row for the legs in each session: any squat',
  }),
  'observation-unread': ({ text, nearest }) => ({
    message: `Nobody but you reads ${quoted(text)}: no rule knows it.`,
    hint: nearest === '' ? `note: ${text}` : `${nearest}  (did you mean that?); or, for yourself, note: ${text}`,
  }),
  'partner-one-way': ({ partner, client }) => ({
    message: `${quoted(partner)} is named as the partner here, and that page does not name ${quoted(client)}.`,
    hint: `partner: ${client} on the page of ${partner}, or no partner on this one`,
  }),
  'exercises-other-language': ({ booklet, exercises }) => ({
    message: `The booklet speaks ${quoted(booklet)}, and the exercises in it stay as they are written, in ${quoted(exercises)}.`,
    hint: `nothing where this client reads both; else language: ${exercises}, as in studio.md`,
  }),
};
