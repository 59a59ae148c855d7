/** Dates on file against the day of planning. */
import { placeOfFact } from '../../model/client.js';
import { addDays, type Day, isoOfDay } from '../../model/day.js';
import type { Place } from '../../model/place.js';
import { ofClient, type Problem } from '../../model/problem.js';
import type { BlockContext } from '../block-context.js';

type Dated = Extract<Problem, { code: 'date-in-future' }>['data']['what'];

/** What is taken for an allowance. */
const UNSAFE: ReadonlySet<Dated> = new Set<Dated>(['clearance', 'check after the birth']);

/**
 * What has been seen, asked or passed is dated today at the latest. A block that is over is only warned of.
 * Reports `date-in-future` and `block-ended`.
 */
export function screenDates({ client, programme, today, firstDay }: BlockContext): readonly Problem[] {
  const scope = ofClient(client.id);
  const { screening, clearance, bodyMass, signOffs, tests, observations, health } = client;
  const { bloodPressure, birth } = health;
  const dated: { readonly what: Dated; readonly date: Day | undefined; readonly place: Place }[] = [
    { what: 'screening', date: screening?.date, place: placeOfFact(client, 'screening date') },
    { what: 'clearance', date: clearance?.date, place: placeOfFact(client, 'clearance date') },
    { what: 'body mass', date: bodyMass?.date, place: placeOfFact(client, 'body mass') },
    { what: 'blood pressure', date: bloodPressure?.date, place: bloodPressure?.place ?? client.place },
    { what: 'birth', date: birth?.date, place: birth?.place ?? client.place },
    { what: 'check after the birth', date: birth?.checked, place: birth?.place ?? client.place },
    ...signOffs.map(({ date, place }) => ({ what: 'sign-off' as const, date, place })),
    ...tests.map(({ date, place }) => ({ what: 'test' as const, date, place })),
    ...observations.map(({ date, place }) => ({ what: 'observation' as const, date, place })),
  ];
  const ahead = dated.flatMap(({ what, date, place }): Problem[] => {
    if (date === undefined || date <= today) return [];
    const data = { what, date: isoOfDay(date), today: isoOfDay(today) };
    const head = { code: 'date-in-future', severity: 'error', scope, place, data } as const;
    return [UNSAFE.has(what) ? { ...head, unsafe: true } : head];
  });
  const ends = addDays(firstDay, 7 * programme.curve.length - 1);
  if (ends >= today) return ahead;
  const place = placeOfFact(client, 'starts');
  return [...ahead, { code: 'block-ended', severity: 'warning', scope, place, data: { ends: isoOfDay(ends) } }];
}
