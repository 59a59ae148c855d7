/** What pain and signs of alarm ask of the coach: to speak, to see again, to write a caution, to look at one again. */

import type { Caution, Client } from '../../model/client.js';
import { addDays, type Day, isoOfDay } from '../../model/day.js';
import type { Edit } from '../../model/edit.js';
import { BODY_PARTS, type BodyPart } from '../../model/exercise.js';
import type { Side } from '../../model/identity.js';
import type { Proposal } from '../../model/review.js';
import { painsOf, signOffsLeft } from '../history/marks/pain.js';
import { reasonOf } from '../reason-of.js';
import { PROPOSE_CAUTION } from '../rules/propose-caution.js';
import { PROPOSE_CAUTION_DAYS } from '../rules/propose-caution-days.js';
import { PROPOSE_LOOK } from '../rules/propose-look.js';
import { PROPOSE_MESSAGE } from '../rules/propose-message.js';
import { PROPOSE_SIGN_OFF } from '../rules/propose-sign-off.js';
import { alarmsIn, bandOf, hurts, type Pain, sideOf } from './pains.js';
import { count, type Reviewing, wasDone, word } from './reviewing.js';

/** A sign of alarm that nobody has cleared: one message for all of them. */
export function messagesForAlarm(reviewing: Reviewing): readonly Proposal[] {
  const open = alarmsIn(reviewing).filter(({ cleared }) => !cleared);
  const last = open.at(-1);
  if (last === undefined) return [];
  const signs = [...new Set(open.map(({ sign }) => sign))].map((sign) => word('sign', sign));
  return [message([word('why', 'alarm'), ...signs, word('marked', last.date)])];
}

/** Pain for which an exercise is left out, marked and not cleared: the gravest of the latest day. */
export function messagesForPain(pains: readonly Pain[]): readonly Proposal[] {
  const open = pains.filter((pain) => pain.band === 'leave' && !pain.seen && !pain.cleared);
  const last = open.at(-1);
  if (last === undefined) return [];
  const gravest = open
    .filter(({ day }) => day === last.day)
    .reduce((a, b) => (b.report.degree > a.report.degree ? b : a));
  return [message([word('why', 'pain'), ...painFigures(gravest)])];
}

const message = (inputs: Proposal['reason']['inputs']): Proposal => ({
  reason: reasonOf(PROPOSE_MESSAGE, 'coach', inputs, 'measured'),
  edits: [],
});

const painFigures = ({ report, day, exercise }: Pain): Proposal['reason']['inputs'] => [
  ...(exercise === null ? [] : [word('exercise', exercise)]),
  count('degree', report.degree),
  word('where', report.where),
  word('side', report.side ?? 'both'),
  word('marked', isoOfDay(day)),
];

/** One for each exercise whose sign-off pain or an alarm has taken back. */
export function proposeSignOffs(reviewing: Reviewing): readonly Proposal[] {
  const { taken } = signOffsLeft(reviewing, painsOf(reviewing));
  const latest = taken.filter((one, at) => taken.findLastIndex(({ exercise }) => exercise === one.exercise) === at);
  return latest.map(({ exercise, report, day }) => {
    const inputs = [
      word('exercise', exercise.id),
      count('degree', report.degree),
      word('where', report.where),
      word('marked', isoOfDay(day)),
    ];
    return { reason: reasonOf(PROPOSE_SIGN_OFF, 'coach', inputs, 'measured'), edits: [] };
  });
}

/**
 * For each part and side. Once in the highest band, or from the second band on, on so many days: to be taken care with;
 * in the highest band on so many days: to be avoided. The exercise itself is left out from the first word on. None where a caution that strict holds already; one that is less strict is made stricter.
 */
export function proposeCautions(reviewing: Reviewing, pains: readonly Pain[]): readonly Proposal[] {
  const { rules, today } = reviewing;
  const days = rules.valueOf(PROPOSE_CAUTION_DAYS);
  const recent = pains.filter((pain) => !pain.cleared && pain.day > today - days && bandOf(pain) >= 1);
  return BODY_PARTS.flatMap((part) => {
    const here = recent.filter(({ report }) => report.where === part);
    return sidesOf(here).flatMap((side): readonly Proposal[] => {
      const own = here.filter((pain) => sideOf(pain) === side || sideOf(pain) === 'both');
      const grave = own.filter(({ band }) => band === 'leave');
      const often = (pains: readonly Pain[]): boolean =>
        new Set(pains.map(({ day }) => day)).size >= rules.valueOf(PROPOSE_CAUTION);
      if (grave.length === 0 && !often(own)) return [];
      return caution(reviewing, { part, side, degree: often(grave) ? 'avoid' : 'take care' }, own);
    });
  });
}

/** Each side that was named; what was said of none counts for either. */
function sidesOf(pains: readonly Pain[]): readonly (Side | 'both')[] {
  const named = (['left', 'right'] as const).filter((side) => pains.some((pain) => sideOf(pain) === side));
  return named.length === 0 && pains.length > 0 ? ['both'] : named;
}

interface Wanted {
  readonly part: BodyPart;
  readonly side: Side | 'both';
  readonly degree: Caution['degree'];
}

function caution(reviewing: Reviewing, wanted: Wanted, own: readonly Pain[]): readonly Proposal[] {
  const { client, rules, today, words } = reviewing;
  const { part, side, degree } = wanted;
  const held = client.cautions.findIndex(
    (one) => one.what === part && holds(one, today) && (one.side === 'both' || one.side === side),
  );
  const found = client.cautions[held];
  // Only one without phases covers every way the part is asked for.
  const covers = found !== undefined && found.phases.length === 0;
  if (covers && (found.degree === 'avoid' || degree === 'take care')) return [];
  const review = isoOfDay(addDays(today, rules.valueOf(PROPOSE_CAUTION_DAYS)));
  const edits: readonly Edit[] = covers
    ? [
        { kind: 'set-in-entry', path: ['cautions', held], key: 'degree', value: degree },
        { kind: 'set-in-entry', path: ['cautions', held], key: 'review', value: review },
      ]
    : [
        {
          kind: 'add-to-list',
          path: ['cautions'],
          entry: {
            what: part,
            degree,
            ...(side === 'both' ? {} : { side }),
            from: isoOfDay(today),
            review,
            by: words.by,
          },
        },
      ];
  const worst = own.reduce((a, b) => (b.report.degree >= a.report.degree ? b : a));
  const inputs = [
    word('where', part),
    word('side', side),
    word('caution', degree),
    count('degree', worst.report.degree),
    count('days', new Set(own.map(({ day }) => day)).size),
    word('marked', isoOfDay(own.at(-1)?.day ?? today)),
    word('review', review),
  ];
  return [{ reason: reasonOf(PROPOSE_CAUTION, 'coach', inputs, 'measured'), edits }];
}

const holds = ({ from, until }: Caution, today: Day): boolean =>
  from <= today && (until === undefined || until >= today);

/**
 * A caution for a part of the body, held for as long at least, of which no pain was said while what asks that part was
 * done in every week of those days. Only the day of looking again is written; to end it is the coach's.
 */
export function proposeLooks(reviewing: Reviewing, pains: readonly Pain[]): readonly Proposal[] {
  const { client, rules, today } = reviewing;
  const quiet = rules.valueOf(PROPOSE_LOOK);
  return client.cautions.flatMap((one, index): readonly Proposal[] => {
    if (!isPart(one.what) || !holds(one, today) || one.from > today - quiet) return [];
    const hurt = pains.some(
      (pain) =>
        hurts(pain) &&
        pain.report.where === one.what &&
        pain.day > today - quiet &&
        (one.side === 'both' || sideOf(pain) === 'both' || sideOf(pain) === one.side),
    );
    if (hurt || !trainedAllAlong(reviewing, one.what, quiet)) return [];
    const edits: readonly Edit[] =
      one.review !== undefined && one.review <= today
        ? []
        : [{ kind: 'set-in-entry', path: ['cautions', index], key: 'review', value: isoOfDay(today) }];
    const inputs = [word('where', one.what), word('side', one.side), count('days', quiet, 'days'), ...since(one)];
    return [{ reason: reasonOf(PROPOSE_LOOK, 'coach', inputs, 'measured'), edits }];
  });
}

const since = ({ from, by }: Client['cautions'][number]) => [word('from', isoOfDay(from)), word('by', by)];
const isPart = (what: Caution['what']): what is BodyPart => BODY_PARTS.some((part) => part === what);

function trainedAllAlong({ exercises, history, today }: Reviewing, part: BodyPart, quiet: number): boolean {
  const asks = (id: string): boolean => exercises.get(id)?.facts.asks.some(({ of }) => of === part) ?? false;
  const trained = history.sessions
    .filter(({ rows }) => rows.some(({ sets }) => sets.some((set) => wasDone(set) && asks(set.exercise))))
    .map(({ day }) => day);
  const weeks = Math.max(1, Math.floor(quiet / 7));
  return Array.from({ length: weeks }, (_, index) => index).every((week) =>
    trained.some((day) => day <= today - 7 * week && day > today - 7 * (week + 1)),
  );
}
