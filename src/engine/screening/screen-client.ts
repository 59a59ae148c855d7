/**
 * Whether a plan may be made at all: age, the published pre-participation questions, clearance, and facts no rule
 * reads yet. It never says that anybody is fit; it only asks first.
 */
import { type Clearance, type Client, placeOfFact } from '../../model/client.js';
import { addDays, agesInYear, type Day, isoOfDay } from '../../model/day.js';
import type { Place } from '../../model/place.js';
import { ofClient, type Problem } from '../../model/problem.js';
import type { BlockContext } from '../block-context.js';
import { ADULT_FROM } from '../rules/adult-from.js';
import { CLEARANCE_HOLDS } from '../rules/clearance-holds.js';
import { SCREENING_HOLDS } from '../rules/screening-holds.js';

export const yearOf = (day: number): number => new Date(day * 86_400_000).getUTCFullYear();

/** Every ground for withholding the plan, all of them at once; empty where none is found. */
export function screenClient(context: BlockContext): readonly Problem[] {
  return [...screenAge(context), ...screenHealth(context), ...screenDates(context), ...factsUnread(context.client)];
}

/** The youngest the birth year allows on the first day decides. Reports `under-age`. */
function screenAge({ client, firstDay, rules }: BlockContext): readonly Problem[] {
  const { youngest } = agesInYear(client.birthYear, yearOf(firstDay));
  const least = rules.valueOf(ADULT_FROM);
  if (youngest >= least) return [];
  const data = { youngest, least };
  return [
    {
      code: 'under-age',
      severity: 'error',
      scope: ofClient(client.id),
      place: placeOfFact(client, 'birth year'),
      data,
      unsafe: true,
    },
  ];
}

/**
 * The six boxes of the published pre-participation logic: regular exercise × known disease × signs or symptoms
 * (Riebe et al. 2015, Med Sci Sports Exerc 47:2473-2479, figure 2). A resistance block counts as vigorous, because
 * no moderate block is planned yet:
 *
 * | regular | disease | symptoms | |
 * | --- | --- | --- | --- |
 * | any | any | yes | `symptoms` |
 * | no | yes | no | `clearance-needed`; with clearance `moderate-only`, since it begins light to moderate |
 * | yes | yes | no | with clearance for vigorous work in the last 12 months none, else `moderate-only` |
 * | any | no | no | none |
 *
 * A clearance on file that ends inside the block or is for moderate work alone holds whatever the answers are.
 * Reports besides: `screening-missing`, `screening-unclear`, `screening-out-of-date`, `clearance-lapses`.
 */
function screenHealth({ client, firstDay, lastDay, rules }: BlockContext): readonly Problem[] {
  const scope = ofClient(client.id);
  const { screening, clearance } = client;
  if (screening === undefined) {
    return [{ code: 'screening-missing', severity: 'error', scope, place: client.place, data: {} }];
  }
  const head = { severity: 'error', scope, place: screening.place } as const;
  const problems: Problem[] = [];
  const questions = [
    { question: 'regular exercise', answer: screening.regularExercise },
    { question: 'known disease', answer: screening.knownDisease },
    { question: 'symptoms', answer: screening.symptoms },
  ]
    .filter(({ answer }) => answer === 'unknown')
    .map(({ question }) => question);
  if (questions.length > 0) problems.push({ ...head, code: 'screening-unclear', data: { questions } });
  const mostDays = rules.valueOf(SCREENING_HOLDS);
  if (firstDay - screening.date > mostDays) {
    const data = { date: isoOfDay(screening.date), mostDays };
    problems.push({ ...head, place: placeOfFact(client, 'screening date'), code: 'screening-out-of-date', data });
  }
  if (screening.symptoms === 'yes') {
    return [...problems, { ...head, code: 'symptoms', data: {}, unsafe: true }];
  }
  const ends = clearance === undefined ? undefined : clearanceEnds(clearance, rules.valueOf(CLEARANCE_HOLDS));
  if (ends !== undefined && ends < lastDay) {
    const data = { until: isoOfDay(ends), blockEnds: isoOfDay(lastDay) };
    problems.push({
      ...head,
      place: placeOfFact(client, 'clearance date'),
      code: 'clearance-lapses',
      data,
      unsafe: true,
    });
  }
  if (screening.knownDisease !== 'yes') {
    if (clearance?.for === 'moderate') {
      problems.push({ ...head, code: 'moderate-only', data: { because: 'clearance' } });
    }
    return problems;
  }
  if (screening.regularExercise !== 'yes' && clearance === undefined) {
    const data = { regularExercise: screening.regularExercise };
    return [...problems, { ...head, code: 'clearance-needed', data, unsafe: true }];
  }
  if (screening.regularExercise === 'yes' && clearance?.for === 'vigorous') return problems;
  return [...problems, { ...head, code: 'moderate-only', data: { because: 'known disease' } }];
}

/** The day stated, and never later than the longest a clearance holds. */
function clearanceEnds(clearance: Clearance, holds: number): Day {
  const longest = addDays(clearance.date, holds);
  return clearance.until !== undefined && clearance.until < longest ? clearance.until : longest;
}

type Dated = Extract<Problem, { code: 'date-in-future' }>['data']['what'];

/**
 * What has been seen, asked or passed is dated today at the latest. A block that is over is only warned of.
 * Reports `date-in-future` and `block-ended`.
 */
function screenDates({ client, programme, today, firstDay }: BlockContext): readonly Problem[] {
  const scope = ofClient(client.id);
  const { screening, clearance, bodyMass, signOffs, tests, observations } = client;
  const dated: { readonly what: Dated; readonly date: Day | undefined; readonly place: Place }[] = [
    { what: 'screening', date: screening?.date, place: placeOfFact(client, 'screening date') },
    { what: 'clearance', date: clearance?.date, place: placeOfFact(client, 'clearance date') },
    { what: 'body mass', date: bodyMass?.date, place: placeOfFact(client, 'body mass') },
    ...signOffs.map(({ date, place }) => ({ what: 'sign-off' as const, date, place })),
    ...tests.map(({ date, place }) => ({ what: 'test' as const, date, place })),
    ...observations.map(({ date, place }) => ({ what: 'observation' as const, date, place })),
  ];
  const ahead = dated.flatMap(({ what, date, place }): Problem[] => {
    if (date === undefined || date <= today) return [];
    const data = { what, date: isoOfDay(date), today: isoOfDay(today) };
    const head = { code: 'date-in-future', severity: 'error', scope, place, data } as const;
    return [what === 'clearance' ? { ...head, unsafe: true } : head];
  });
  const ends = addDays(firstDay, 7 * programme.curve.length - 1);
  if (ends >= today) return ahead;
  const place = placeOfFact(client, 'starts');
  return [...ahead, { code: 'block-ended', severity: 'warning', scope, place, data: { ends: isoOfDay(ends) } }];
}

/** Facts that no rule reads yet are errors, not decorations. Reports `not-handled`. */
function factsUnread(client: Client): readonly Problem[] {
  const scope = ofClient(client.id);
  const unread = [
    ...client.unhandled.map(({ fact, place }) => ({ fact, place, why: 'no rule reads it yet' })),
    ...client.observations.map(({ seen, place }) => ({
      fact: `observation: ${seen}`,
      place,
      why: 'no rule reads observations yet',
    })),
  ];
  if (client.partner !== undefined) {
    unread.push({
      fact: 'partner',
      place: placeOfFact(client, 'partner'),
      why: 'two people and one kit are not planned together yet',
    });
  }
  if (client.replanning !== 'fixed') {
    unread.push({ fact: 'replanning', place: placeOfFact(client, 'replanning'), why: 'the phone does not replan yet' });
  }
  if (client.largePrint) {
    unread.push({ fact: 'large print', place: client.place, why: 'large print is not set yet' });
  }
  if (!/^en(-|$)/i.test(client.language)) {
    unread.push({ fact: 'language', place: client.place, why: 'the booklet speaks English only so far' });
  }
  return unread.map(({ fact, place, why }): Problem => {
    return { code: 'not-handled', severity: 'error', scope, place, data: { fact, why } };
  });
}
