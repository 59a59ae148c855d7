/** What a clearance on file allows in this block, and whether one is needed at all. */
import type { Answer } from '../../model/client.js';
import { addDays, type Day } from '../../model/day.js';
import { CLEARANCE_HOLDS } from '../rules/clearance-holds.js';
import { diseaseOnFile } from './on-file.js';
import { asksOfPregnancy } from './read-pregnancy.js';
import { readPressure } from './read-pressure.js';
import type { Screened } from './screened.js';

export interface ClearanceRead {
  /** The effort it was given for; `null` where none on file holds on the first day. */
  readonly allows: 'moderate' | 'vigorous' | null;
  /** It ended before the first day, on this one, and nothing may go on without it. */
  readonly over: Day | null;
  /** It ends inside the block: the last day it holds. */
  readonly ends: Day | null;
  /** Moderate work alone, by what it was given for or because the day it names is over. */
  readonly onlyModerate: boolean;
}

const NONE: ClearanceRead = { allows: null, over: null, ends: null, onlyModerate: false };

/**
 * The day it names always counts. A clearance without one, or with a later one, ends `clearance-holds` after it was
 * given only where it is needed: by known disease without regular exercise, or for vigorous work, or by pressure or
 * pregnancy. Where one is needed for any work at all, nothing goes on once it is over; otherwise what is over leaves
 * the moderate plan for which none is needed. That it was for moderate work alone counts however old it is.
 */
export function readClearance(screened: Screened): ClearanceRead {
  const { client, firstDay, lastDay, rules } = screened;
  const { clearance } = client;
  if (clearance === undefined) return NONE;
  const disease = knownDisease(screened) === 'yes';
  const regular = client.screening?.regularExercise === 'yes';
  const neededAtAll = (disease && !regular) || readPressure(screened).asks || asksOfPregnancy(screened).length > 0;
  const needed = neededAtAll || (disease && clearance.for === 'vigorous');
  const named = clearance.until;
  const yearEnd = addDays(clearance.date, rules.valueOf(CLEARANCE_HOLDS));
  const end = needed && (named === undefined || yearEnd < named) ? yearEnd : named;
  const onlyModerate = clearance.for === 'moderate';
  const holds = { ...NONE, allows: clearance.for, onlyModerate };
  if (end === undefined || end >= lastDay) return holds;
  if (end >= firstDay) return { ...holds, ends: end };
  if (neededAtAll) return { ...holds, over: end };
  return { ...NONE, onlyModerate: onlyModerate || end === named };
}

/** Whether a clearance given on `since` or later holds on the first day. */
export function isCleared(screened: Screened, since: Day): boolean {
  const { allows, over } = readClearance(screened);
  const { clearance } = screened.client;
  return clearance !== undefined && allows !== null && over === null && clearance.date >= since;
}

/** The answer given, unless other facts on file say yes. */
export function knownDisease({ client }: Screened): Answer {
  return diseaseOnFile(client.health) ? 'yes' : (client.screening?.knownDisease ?? 'unknown');
}
