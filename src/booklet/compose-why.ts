/** Why an exercise's figures are what they are, for its page: over every session it stands in, and only what matters most. */
import type { ExercisePart } from '../model/booklet.js';
import type { Exercise } from '../model/exercise.js';
import type { Reason } from '../model/reason.js';
import { sayToClient } from '../words/say-to-client.js';
import { stripLabel } from './compose-session.js';
import { MINDED_RULE } from './minded.js';
import { type Subject, standingsOf, stripsOf, WORK_GROUPS } from './subject.js';

/** A page has room for no more, and a reader no patience. */
const MOST = 3;

/** What says how every set is counted, and not what changes: told last. */
const EVERYDAY = [/^walk-asked$/, /^walk-range$/, /^walk-floor$/, /^walk-volume/, /^walk-easy-/];
const isEveryday = ({ rule }: Reason): boolean => EVERYDAY.some((pattern) => pattern.test(rule));

interface Told {
  readonly everyday: boolean;
  /** By session, the weeks it holds for. */
  readonly weeks: Map<string, number[]>;
}

export function composeWhy(subject: Subject, exercise: Exercise): NonNullable<ExercisePart['why']> {
  const { plan, speech, names } = subject;
  const standing = new Map<string, number[]>();
  const told = new Map<string, Told>();
  for (const strip of stripsOf(plan)) {
    const session = stripLabel(subject, strip);
    for (const { column, item } of standingsOf(strip, WORK_GROUPS)) {
      if (item.exercise !== exercise.id) continue;
      const week = column.week.number;
      note(standing, session, week);
      for (const reason of item.reasons.filter(({ audience, rule }) => audience === 'client' && rule !== MINDED_RULE)) {
        const text = sayToClient(reason, speech, names);
        if (text === '') continue;
        const one = told.get(text) ?? { everyday: isEveryday(reason), weeks: new Map() };
        note(one.weeks, session, week);
        told.set(text, one);
      }
    }
  }
  const inOrder = [...told].sort(([, a], [, b]) => Number(a.everyday) - Number(b.everyday));
  return inOrder.slice(0, MOST).map(([text, { weeks }]) => ({ lead: leadOf(subject, weeks, standing), text }));
}

function note(weeks: Map<string, number[]>, session: string, week: number): void {
  const noted = weeks.get(session) ?? [];
  if (!noted.includes(week)) weeks.set(session, [...noted, week]);
}

/** Nothing where it holds throughout; no session where the exercise stands in one alone. */
function leadOf(
  { speech }: Subject,
  weeks: ReadonlyMap<string, readonly number[]>,
  standing: ReadonlyMap<string, readonly number[]>,
): string {
  const always = [...standing].every(([session, all]) => weeks.get(session)?.length === all.length);
  if (always) return '';
  const { booklet } = speech.words;
  return booklet.whyLead(
    [...weeks].map(([session, of]) => ({
      session: standing.size > 1 ? session : '',
      weeks: standing.size > 1 && of.length === standing.get(session)?.length ? [] : of,
    })),
  );
}
