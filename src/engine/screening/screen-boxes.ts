/** The published questions before exercise, and the clearance that answers them. */
import { placeOfFact } from '../../model/client.js';
import { isoOfDay } from '../../model/day.js';
import { ofClient, type Problem } from '../../model/problem.js';
import { SCREENING_HOLDS } from '../rules/screening-holds.js';
import { knownDisease, readClearance } from './read-clearance.js';
import type { Screened } from './screened.js';

/**
 * The six boxes of the published pre-participation logic: regular exercise × known disease × signs or symptoms
 * (Riebe et al. 2015, Med Sci Sports Exerc 47:2473-2479, figure 2), for moderate and for vigorous effort. Where only
 * moderate effort is open a moderate plan is made; that is `standing.ts`. Here stands who is withheld:
 *
 * | regular | disease | symptoms | |
 * | --- | --- | --- | --- |
 * | any | any | yes | `symptoms`, whatever clearance there is |
 * | no | yes | no | without clearance `clearance-needed` |
 * | any | any | no | with a clearance that ended before the first day and is still called for, `clearance-lapses` |
 *
 * A clearance that ends inside the block is a warning: sessions stop there. Reports besides: `screening-missing`,
 * `screening-unclear`, `screening-out-of-date`.
 */
export function screenBoxes(screened: Screened): readonly Problem[] {
  const { client, firstDay, rules } = screened;
  const scope = ofClient(client.id);
  const { screening, clearance } = client;
  if (screening === undefined) {
    return [{ code: 'screening-missing', severity: 'error', scope, place: client.place, data: {} }];
  }
  const head = { severity: 'error', scope, place: screening.place } as const;
  const problems: Problem[] = [];
  const disease = knownDisease(screened);
  const asked = [
    { question: 'regular exercise', answer: screening.regularExercise },
    { question: 'known disease', answer: screening.knownDisease },
    { question: 'symptoms', answer: screening.symptoms },
  ] as const;
  const questions = asked.filter(({ answer }) => answer === 'unknown').map(({ question }) => question);
  if (questions.length > 0) problems.push({ ...head, code: 'screening-unclear', data: { questions } });
  const mostDays = rules.valueOf(SCREENING_HOLDS);
  if (firstDay - screening.date > mostDays) {
    const data = { date: isoOfDay(screening.date), mostDays };
    problems.push({ ...head, place: placeOfFact(client, 'screening date'), code: 'screening-out-of-date', data });
  }
  if (screening.symptoms === 'yes') problems.push({ ...head, code: 'symptoms', data: {}, unsafe: true });
  if (disease === 'yes' && screening.regularExercise !== 'yes' && clearance === undefined) {
    const data = { regularExercise: screening.regularExercise };
    problems.push({ ...head, code: 'clearance-needed', data, unsafe: true });
  }
  return [...problems, ...clearanceLapses(screened)];
}

function clearanceLapses(screened: Screened): readonly Problem[] {
  const { client, lastDay } = screened;
  const { over, ends } = readClearance(screened);
  const until = over ?? ends;
  if (until === null) return [];
  const data = { until: isoOfDay(until), blockEnds: isoOfDay(lastDay) };
  const place = placeOfFact(client, 'clearance date');
  const head = { code: 'clearance-lapses', scope: ofClient(client.id), place, data } as const;
  return over === null ? [{ ...head, severity: 'warning' }] : [{ ...head, severity: 'error', unsafe: true }];
}
