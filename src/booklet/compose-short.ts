/** The short version of a session: which of its sets count as the session done on a bad day. */
import type { WeekText } from '../model/booklet.js';
import type { Item, PlanSession } from '../model/plan.js';
import { type Strip, type Subject, WORK_GROUPS } from './subject.js';

/** A sentence for each week that has one. */
export function composeShort(subject: Subject, strip: Strip): readonly WeekText[] {
  return strip.columns.flatMap(({ week, session }) => {
    const text = shortOf(subject, session);
    return text === '' ? [] : [{ week: week.number, text }];
  });
}

function shortOf({ names, speech }: Subject, { groups, short }: PlanSession): string {
  const wanted = new Set<string>(short.sets);
  const taken = (item: Item): Item['sets'] => item.sets.filter(({ key }) => wanted.has(key));
  const warmUp = groups.some(({ kind, minutes }) => kind === 'warm-up' && (minutes ?? 0) > 0);
  const work = groups.filter(({ kind }) => WORK_GROUPS.includes(kind)).flatMap(({ items }) => items);
  const sets = work.flatMap((item) => {
    const own = taken(item).filter(({ kind }) => kind !== 'warm-up');
    const sides = new Set(own.map(({ side }) => side ?? 'both')).size;
    return own.length === 0
      ? []
      : [{ name: names.exercise(item.exercise), sets: Math.ceil(own.length / sides), sides: sides > 1 }];
  });
  if (sets.length === 0) return '';
  return speech.words.booklet.shortVersion(short.minutes, warmUp, sets);
}
