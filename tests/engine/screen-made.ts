/** Screens one client alone, without planning anything: who is withheld, and what it comes to. */
import { exercisesById } from '../../src/engine/block-context.js';
import { layOverrides } from '../../src/engine/rulebook.js';
import { screenClient } from '../../src/engine/screening/screen-client.js';
import { type Standing, standingOf } from '../../src/engine/screening/standing.js';
import { tellStanding } from '../../src/engine/screening/tell-standing.js';
import type { Client, Health } from '../../src/model/client.js';
import { addDays } from '../../src/model/day.js';
import { sessionId } from '../../src/model/identity.js';
import type { Finding } from '../../src/model/plan.js';
import type { Problem } from '../../src/model/problem.js';
import { aClient, on, oneSession } from './make-block.js';

export const TODAY = on('2026-12-20');
/** Six Mondays. */
export const FIRST = on('2027-01-04');
export const LAST = on('2027-02-08');

/** Everything has been asked, and there is nothing. */
export const ASKED: Health = { medicines: [], conditions: [], falls: 0 };

/** One session on each of the Mondays. */
const DAYS = [1, 2, 3, 4, 5, 6].map((week) => {
  return { session: sessionId('A'), day: addDays(FIRST, 7 * (week - 1)), week, occurrence: week };
});
const RULES = layOverrides([]).value;

export interface Screening {
  readonly problems: readonly Problem[];
  /** Codes of the errors. */
  readonly withheld: readonly string[];
  readonly standing: Standing;
  readonly told: readonly Finding[];
}

export function screen(client: Partial<Client>): Screening {
  const screened = {
    client: aClient({ health: ASKED, ...client }),
    rules: RULES,
    today: TODAY,
    firstDay: FIRST,
    lastDay: LAST,
  };
  const standing = standingOf(screened);
  const context = {
    ...screened,
    programme: oneSession(),
    exercises: exercisesById([]),
    recalls: new Map(),
    standing,
    days: DAYS,
    next: { day: FIRST, week: 1 },
  };
  const problems = screenClient(context);
  return {
    problems,
    withheld: problems.filter(({ severity }) => severity === 'error').map(({ code }) => code),
    standing,
    told: tellStanding(context),
  };
}

export const withHealth = (health: Health): Screening => screen({ health: { ...ASKED, ...health } });

/** `avoid impact`, in order, of the cautions that follow. */
export const derivedIn = ({ standing }: Screening): readonly string[] =>
  [...new Set(standing.derived.map(({ what, degree }) => `${degree} ${what}`))].sort();

/** The rules told to this audience. */
export const toldTo = ({ told }: Screening, audience: Finding['audience']): readonly string[] =>
  told.filter((finding) => finding.audience === audience).map(({ rule }) => rule);
