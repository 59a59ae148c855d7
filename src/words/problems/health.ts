/** Sentences for what a client’s health asks for before anything is planned. Local rules go first. */
import type { ScreeningQuestion } from '../../model/client.js';
import type { PlanProblems } from '../../model/problems-plan.js';
import { listed, type Sayings } from './said.js';
import { sayDay } from './say-day.js';

/** After `whether there is`. */
const ASKED: Readonly<Record<ScreeningQuestion, string>> = {
  'regular exercise': 'regular exercise',
  'known disease': 'a known disease',
  symptoms: 'any symptom',
};

const CLEAR = 'what a doctor or other licensed person says, under clearance; local rules go first';

const clearedSince = (day: string): string =>
  `what a licensed person has said on ${day} or later, under clearance; local rules go first`;

type HealthProblems = Pick<
  PlanProblems,
  | 'alarm-reported'
  | 'under-age'
  | 'screening-missing'
  | 'screening-unclear'
  | 'screening-out-of-date'
  | 'symptoms'
  | 'clearance-needed'
  | 'clearance-lapses'
  | 'moderate-only'
  | 'pressure-too-high'
  | 'pressure-ask-first'
  | 'pregnancy-refused'
  | 'pregnancy-ask-first'
  | 'due-date-passed'
  | 'due-date-unlikely'
  | 'birth-not-checked'
>;

export const healthSayings: Sayings<HealthProblems> = {
  'alarm-reported': ({ signs, date }) => ({
    message: `A sign of alarm was marked on ${sayDay(date)}: ${listed(signs, 'and')}. No booklet goes out, and nothing is planned.`,
    hint: 'speak to the client now; such a sign is for emergency care or a doctor, as local rules have it. Once a licensed person has said that training may go on, write cleared under observations, with the day',
  }),
  'under-age': ({ youngest, least }) => ({
    message: `This client may be ${youngest}; a booklet is for people of ${least} and over.`,
    hint: 'the right birth year, if this one is wrong',
  }),
  'screening-missing': () => ({
    message: 'The questions before exercise have not been asked.',
    hint: 'screening: with date, regular exercise, known disease and symptoms',
  }),
  'screening-unclear': ({ questions }) => ({
    message: `Whether there is ${listed(questions.map((question) => ASKED[question]))} is not known.`,
    hint: 'ask, and write yes or no',
  }),
  'screening-out-of-date': ({ date, mostDays }) => ({
    message: `The questions were asked on ${date}, which is not within the ${mostDays} days before the block.`,
    hint: 'ask again, and write the new date',
  }),
  symptoms: () => ({
    message: 'There are symptoms. No booklet goes out: this client sees a doctor first.',
    hint: 'send them to their doctor, and ask the questions again once the doctor has seen them',
  }),
  'clearance-needed': ({ regularExercise }) => ({
    message: `There is known disease${regularExercise === 'yes' ? '' : ' and no regular exercise so far'}: ask first.`,
    hint: CLEAR,
  }),
  'clearance-lapses': ({ until, blockEnds }) => ({
    message: `The clearance holds until ${until}, and the block runs to ${blockEnds}. No session is planned after it ends.`,
    hint: 'a clearance that covers the block',
  }),
  'moderate-only': ({ because }) => ({
    message: `This is a moderate plan (${listed(because, 'and')}): more left in reserve, whole sentences, nothing fast, nothing tried.`,
    hint: because.every((cause) => cause === 'clearance' || cause === 'known disease')
      ? 'under clearance, what a licensed person says about harder work; nothing where moderate is right'
      : 'nothing where moderate is right: no clearance makes it a harder one',
  }),
  'pressure-too-high': ({ systolic, diastolic, over, under, date }) => ({
    message: `The blood pressure at rest was ${systolic}/${diastolic} on ${sayDay(date)}, above ${over}/${under}. No booklet goes out.`,
    hint: 'send them to their doctor; write the newer reading once there is one',
  }),
  'pressure-ask-first': ({ systolic, diastolic, over, under, date }) => ({
    message: `The blood pressure at rest was ${systolic}/${diastolic} on ${sayDay(date)}, above ${over}/${under}: ask first.`,
    hint: `${clearedSince('that day')}; or a newer reading`,
  }),
  'pregnancy-refused': ({ conditions }) => ({
    message: `In this pregnancy there is ${listed(conditions, 'and')}. No booklet goes out.`,
    hint: 'what the midwife or doctor says decides; plan again when they have allowed exercise and it is no longer so',
  }),
  'pregnancy-ask-first': ({ conditions, began }) => ({
    message: `In this pregnancy there is ${listed(conditions, 'and')}: ask the midwife or doctor first.`,
    hint: clearedSince(sayDay(began)),
  }),
  'due-date-passed': ({ due, begins }) => ({
    message: `The child is due on ${sayDay(due)}, and the block begins on ${sayDay(begins)}.`,
    hint: 'birth: in place of pregnancy, once there is one; or the day the midwife now gives',
  }),
  'due-date-unlikely': ({ due, today, mostDays }) => ({
    message: `The child is due on ${sayDay(due)}, more than ${mostDays} days after today, ${sayDay(today)}.`,
    hint: 'the day due, as the midwife or doctor gives it',
  }),
  'birth-not-checked': ({ date }) => ({
    message: `Nobody licensed has looked since the birth on ${sayDay(date)}: ask first.`,
    hint: 'under birth, checked: the day a midwife, doctor or physiotherapist allowed exercise',
  }),
};
