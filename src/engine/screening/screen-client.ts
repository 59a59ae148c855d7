/**
 * Whether a plan may be made at all: age, the published pre-participation questions, clearance, facts of health, and
 * facts no rule reads yet. It never says that anybody is fit; it only asks first.
 */
import { type Client, placeOfFact } from '../../model/client.js';
import { agesInYear } from '../../model/day.js';
import { bookletLanguage } from '../../model/languages.js';
import { ofClient, type Problem } from '../../model/problem.js';
import type { BlockContext } from '../block-context.js';
import { ADULT_FROM } from '../rules/adult-from.js';
import { screenBoxes } from './screen-boxes.js';
import { screenDates } from './screen-dates.js';
import { screenHealth } from './screen-health.js';

export const yearOf = (day: number): number => new Date(day * 86_400_000).getUTCFullYear();

/** Every ground for withholding the plan, all of them at once; no error among them where none is found. */
export function screenClient(context: BlockContext): readonly Problem[] {
  const found = [...screenAge(context), ...screenBoxes(context), ...screenHealth(context)];
  const open = found.every(({ severity }) => severity !== 'error');
  return [...found, ...(open ? onlyModerate(context) : []), ...screenDates(context), ...factsUnread(context.client)];
}

/** The youngest the birth year allows on the first day decides. Reports `under-age`. */
function screenAge({ client, firstDay, rules }: BlockContext): readonly Problem[] {
  const { youngest } = agesInYear(client.birthYear, yearOf(firstDay));
  const least = rules.valueOf(ADULT_FROM);
  if (youngest >= least) return [];
  const place = placeOfFact(client, 'birth year');
  const head = { severity: 'error', scope: ofClient(client.id), place, unsafe: true } as const;
  return [{ ...head, code: 'under-age', data: { youngest, least } }];
}

/** Nothing of health withholds the plan, and the coach is told that it is a moderate one, and why. Reports `moderate-only`. */
function onlyModerate({ client, standing }: BlockContext): readonly Problem[] {
  if (!standing.moderate) return [];
  const place = client.screening?.place ?? client.place;
  const data = { because: standing.moderateBecause };
  return [{ code: 'moderate-only', severity: 'advice', scope: ofClient(client.id), place, data }];
}

/** Facts that no rule reads yet are errors, not decorations. Reports `not-handled`. */
function factsUnread(client: Client): readonly Problem[] {
  const scope = ofClient(client.id);
  const unread = client.unhandled.map(({ fact, place }) => ({ fact, place, why: 'no rule reads it yet' }));
  if (bookletLanguage(client.language) === undefined) {
    const why = 'no booklet speaks it yet';
    unread.push({ fact: 'language', place: placeOfFact(client, 'language'), why });
  }
  return unread.map(({ fact, place, why }): Problem => {
    return { code: 'not-handled', severity: 'error', scope, place, data: { fact, why } };
  });
}
